package org.warmvat.cli.answer.fit;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.YearRows;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.question.fit.FitCourse;
import org.warmvat.question.fit.FitResult;
import org.warmvat.question.fit.FittedFigure;
import org.warmvat.regression.Range95;

/** The answer to {@code fit}. */
public final class FitAnswer {

    /** Name of the design file with {@code adjust} written in. */
    public static final String DESIGN_FILE = "design_fitted.yaml";

    private static final double SECONDS_PER_HOUR = 3600;

    private FitAnswer() {}

    /**
     * Tells what was found.
     *
     * @param result the findings
     * @param asked what they are about
     * @param designFile text of the design file with what was found written in; empty where nothing was
     */
    public static Document of(FitResult result, Subject asked, Optional<String> designFile) {
        Draft draft = Draft.of(asked, "what is the tank, by its log?");
        YearRows years = years(result, asked);
        FitWords words = new FitWords(result, years, designFile.isPresent());
        words.tell(draft);
        figures(draft, result, years, words.hints());
        draft.csv("course.csv", course(result.course()));
        result.notes().forEach(draft::assume);
        result.year().ifPresent(year -> draft.warn(year.warnings()));
        designFile.ifPresent(text -> draft.text(DESIGN_FILE, text));
        return draft.table(table(result))
                .tables(years.tables())
                .tables(pieces(result))
                .pictures(() -> List.of(log(result.course()), residuals(result.course())))
                .done();
    }

    /** The tank as fitted in each year. */
    private static YearRows years(FitResult result, Subject asked) {
        return new YearRows(result.years().stream()
                .map(year -> new YearRows.Row(
                        asked.yearName(year.year()),
                        year.gas().isPresent()
                                ? OptionalDouble.of(year.netEnergyKWh().value())
                                : OptionalDouble.empty(),
                        year.backupBoughtKWh().value(),
                        year.shortHours()))
                .toList());
    }

    private static void figures(Draft draft, FitResult result, YearRows years, List<String> hints) {
        Map<String, Object> factors = new LinkedHashMap<>();
        result.factors().forEach((factor, found) -> {
            Map<String, Object> figure = figure(found.estimate(), false);
            figure.put("held", found.held());
            factors.put(factor.key(), figure);
        });
        Map<String, Object> block = Draft.row(
                "factors", factors,
                "ua_w_k", figure(result.derived().uaWPerK(), true),
                "time_constant_h", figure(result.derived().timeConstantH(), true));
        result.derived().ratio().ifPresent(ratio -> block.put("ratio", figure(ratio, true)));
        block.putAll(Draft.row(
                "residual_sd_k", result.residuals().sdK(),
                "residual_lag1", result.residuals().lag1(),
                "readings", result.residuals().readings(),
                "hours", result.residuals().hours(),
                "told_apart", result.doubts().toldApart(),
                "one_value_holds", result.pieces().isOneValue(),
                "hints", hints,
                "year", result.year().map(FitAnswer::year)));
        block.putAll(years.figures());
        draft.figure("fit", block);
    }

    private static Map<String, Object> year(FitResult.Year year) {
        Map<String, Object> row = Draft.row(
                "backup_bought_kwh", figure(year.backupBoughtKWh(), true),
                "net_energy_kwh", year.gas().map(gas -> figure(year.netEnergyKWh(), true)));
        year.gas().ifPresent(ends -> row.putAll(GasWords.figures(ends)));
        return row;
    }

    private static Map<String, Object> figure(FittedFigure estimate, boolean withDrawn) {
        Map<String, Object> figure = new LinkedHashMap<>();
        if (withDrawn) {
            figure.put("drawn", estimate.drawn());
        }
        figure.put("value", estimate.value());
        figure.put("low", estimate.remembered().map(Range95::low).orElse(null));
        figure.put("high", estimate.remembered().map(Range95::high).orElse(null));
        estimate.blocks().ifPresent(blocks -> {
            figure.put("low_blocks", blocks.low());
            figure.put("high_blocks", blocks.high());
        });
        return figure;
    }

    private static Table table(FitResult result) {
        List<List<String>> rows = new ArrayList<>();
        result.factors()
                .forEach((factor, found) -> rows.add(FitWords.row(
                        "factor " + factor.key() + (found.held() ? " (held)" : ""),
                        found.estimate(),
                        "",
                        found.held() || isTold(found.estimate()))));
        FittedFigure ua = result.derived().uaWPerK();
        FittedFigure hours = result.derived().timeConstantH();
        rows.add(FitWords.row("loss of the tank", ua, "W/K", isTold(ua)));
        rows.add(FitWords.row("time constant", hours, "h", isTold(hours)));
        result.derived().ratio().ifPresent(ratio -> rows.add(FitWords.row("envelope over capacity", ratio, "", true)));
        result.year().ifPresent(year -> {
            rows.add(FitWords.row("backup heater, bought in a year", year.backupBoughtKWh(), "kWh", true));
            year.gas()
                    .ifPresent(gas -> rows.add(FitWords.row("net energy of a year", year.netEnergyKWh(), "kWh", true)));
        });
        return new Table(
                "The tank as drawn and as fitted, with 95 % intervals",
                List.of("", "as drawn", "as fitted", "errors that remember", "moving blocks"), rows);
    }

    private static boolean isTold(FittedFigure estimate) {
        return estimate.wider().isPresent();
    }

    private static List<Table> pieces(FitResult result) {
        if (result.pieces().pieces().isEmpty()) {
            return List.of();
        }
        String factor = result.factors().keySet().iterator().next().key();
        return List.of(new Table(
                "The factor " + factor + " from each " + (result.pieces().ofStretches() ? "stretch" : "day")
                        + " of the log alone",
                List.of("from", "value", "standard deviation", ""),
                result.pieces().pieces().stream().map(FitWords::row).toList()));
    }

    private static Csv course(FitCourse course) {
        Csv csv = Csv.of(List.of("time", "slurry_logged_c", "slurry_drawn_c", "slurry_fitted_c", "residual_k"));
        double[] residuals = course.residualsK();
        for (int i = 0; i < residuals.length; i++) {
            csv.row(
                    course.times().get(i).toString(),
                    course.loggedC()[i],
                    course.drawnC()[i],
                    course.fittedC()[i],
                    residuals[i]);
        }
        return csv;
    }

    private static Drawing log(FitCourse course) {
        return chart(course, "fit", "Log and model")
                .caption(
                        "The slurry as logged, and as the model makes it of the tank as drawn and as fitted. The lines break where the"
                                + " log is left out and the tank starts afresh.")
                .strip("slurry, °C", 3)
                .line("as logged", Look.SLURRY, points(course, course.loggedC()))
                .line("tank as drawn", Look.OTHER_SLURRY, points(course, course.drawnC()))
                .line("tank as fitted", Look.NEED, points(course, course.fittedC()));
    }

    private static Drawing residuals(FitCourse course) {
        return chart(course, "residuals", "What is left between log and fitted model")
                .caption(
                        "Log less fitted model. What swings slowly is remembered from reading to reading; what drifts or jumps is"
                                + " something that the model does not know.")
                .stripWithZero("log less model, K", 0.2)
                .line("residual", Look.SLURRY, points(course, course.residualsK()));
    }

    private static LineChart chart(FitCourse course, String name, String title) {
        LocalDateTime from = course.times().get(0);
        return LineChart.overTime(
                name, title, from, course.times().get(course.times().size() - 1));
    }

    /** The line breaks where the tank starts afresh: nothing is known of the time before. */
    private static Points points(FitCourse course, double[] values) {
        LocalDateTime from = course.times().get(0);
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            double hour = Duration.between(from, course.times().get(i)).toSeconds() / SECONDS_PER_HOUR;
            if (course.startsAfresh(i)) {
                points.add(new double[] {hour, Double.NaN});
            }
            points.add(new double[] {hour, values[i]});
        }
        return new Points(
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray());
    }
}
