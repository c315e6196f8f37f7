package org.warmvat.cli.answer.fit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.YearRows;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Telling;
import org.warmvat.cli.words.Words;
import org.warmvat.question.fit.Factor;
import org.warmvat.question.fit.FitResult;
import org.warmvat.question.fit.FittedFigure;
import org.warmvat.question.fit.Pieces;
import org.warmvat.regression.Range95;

/** The answer to {@code fit} in sentences. */
final class FitWords {

    private static final double HARDLY_DIFFERENT = 0.02;
    private static final double STRONG_MEMORY = 0.9;

    private final FitResult result;
    private final YearRows years;
    private final boolean written;
    private final FitHints hints;

    FitWords(FitResult result, YearRows years, boolean written) {
        this.result = result;
        this.years = years;
        this.written = written;
        hints = new FitHints(result);
    }

    void tell(Draft draft) {
        FittedFigure ua = result.derived().uaWPerK();
        FittedFigure hours = result.derived().timeConstantH();
        draft.verdict(verdict(), new FitDoubtWords(result, hints).told())
                .key("Loss, fitted", seeksLoss() ? with(ua, "W/K") : "as drawn, not sought")
                .key("Loss, drawn", Numerals.three(ua.drawn()) + " W/K")
                .key("Time constant, fitted", with(hours, "h"))
                .key("Left over", Numerals.three(result.residuals().sdK()) + " K")
                .paragraph("What is the tank?", found())
                .paragraph("How well is it known?", known())
                .paragraph("What does it mean for a year?", year())
                .paragraph("What may be the reason? Questions to look at, not findings", hints.suspects())
                .paragraph("What would tell more?", hints.more());
    }

    private String verdict() {
        FittedFigure ua = result.derived().uaWPerK();
        if (!result.doubts().goesTogether()) {
            return "This log does not go with this design: nothing is found, and no design is written.";
        }
        if (!result.doubts().toldApart() && result.fitted().isEmpty()) {
            return result.derived()
                    .ratio()
                    .map(ratio -> "This log cannot tell loss and heat capacity apart: only their ratio is known, "
                            + Numerals.three(ratio.value()) + " times the drawn one" + interval(ratio, "") + ".")
                    .orElseGet(() -> "This log cannot tell apart what was asked for: "
                            + Words.list(result.doubts().alike().stream()
                                    .map(Factor::key)
                                    .toList()) + ".");
        }
        if (!seeksLoss()) {
            Map.Entry<Factor, FitResult.Found> first =
                    result.factors().entrySet().iterator().next();
            return "With the loss as drawn (" + Numerals.three(ua.drawn()) + " W/K): "
                    + sentence(first.getKey(), first.getValue());
        }
        String condition =
                result.doubts().toldApart() ? "The tank loses " : "With the heat capacity as drawn, the tank loses ";
        return condition + Numerals.three(ua.value()) + " W/K" + interval(ua, " W/K") + ", "
                + beside(ua.value(), ua.drawn()) + ".";
    }

    private boolean seeksLoss() {
        return result.factors().containsKey(Factor.ENVELOPE) || result.factors().containsKey(Factor.FITTINGS);
    }

    private static String beside(double value, double drawn) {
        double more = value / drawn - 1;
        if (Math.abs(more) < HARDLY_DIFFERENT) {
            return "as drawn (" + Numerals.three(drawn) + ")";
        }
        return Words.percent(Math.abs(more)) + (more > 0 ? " more" : " less") + " than drawn (" + Numerals.three(drawn)
                + ")";
    }

    private static String interval(FittedFigure estimate, String unit) {
        return estimate.wider()
                .map(range -> " (95 %: " + ends(range) + unit + ")")
                .orElse("");
    }

    private static String with(FittedFigure estimate, String unit) {
        return estimate.wider().map(range -> ends(range) + " " + unit).orElse("not told");
    }

    /** Of what cannot be 0 or less. */
    private static String ends(Range95 range) {
        return range.low() > 0 ? plain(range) : "up to " + Numerals.three(range.high());
    }

    private static String plain(Range95 range) {
        return Numerals.three(range.low()) + " to " + Numerals.three(range.high());
    }

    private List<String> found() {
        if (!result.doubts().goesTogether()) {
            return List.of();
        }
        FittedFigure hours = result.derived().timeConstantH();
        return new Telling()
                .each(result.factors().entrySet(), one -> sentence(one.getKey(), one.getValue()))
                .say("Its time constant is " + Numerals.three(hours.value()) + " h" + interval(hours, " h")
                        + ", drawn " + Numerals.three(hours.drawn())
                        + " h: after it, left alone, a third of the temperature difference is left.")
                .when(
                        written,
                        "The design file " + FitAnswer.DESIGN_FILE
                                + " has what was found under adjust; all other commands honour it.")
                .done();
    }

    private static String sentence(Factor factor, FitResult.Found found) {
        String name = subject(factor);
        String times = Numerals.three(found.estimate().value()) + " times";
        if (found.held()) {
            return name + (found.estimate().value() == 1 ? "" : " " + times) + " what is drawn: held, not found.";
        }
        return name
                + (found.estimate().wider().isEmpty()
                        ? " what this log cannot tell by itself (factor " + factor.key() + ")."
                        : " " + times + " what is drawn" + interval(found.estimate(), "") + ".");
    }

    private static String subject(Factor factor) {
        return switch (factor) {
            case ENVELOPE -> "Walls, lid, base and edges lose";
            case FITTINGS -> "The fittings lose";
            case CAPACITY -> "The contents hold";
            case SOLAR_COIL -> "The solar coil passes";
            case BACKUP_COIL -> "The backup coil passes";
            case COLLECTOR -> "The collector takes up";
        };
    }

    private List<String> known() {
        FitResult.Residuals left = result.residuals();
        boolean goesTogether = result.doubts().goesTogether();
        return new Telling()
                .say("Of " + left.readings() + " readings over " + Numerals.three(left.hours()) + " h the model leaves "
                        + Numerals.three(left.sdK()) + " K (standard deviation); neighbouring residuals correlate by "
                        + Numerals.fixed(left.lag1(), 2) + ".")
                .when(
                        goesTogether && left.lag1() > STRONG_MEMORY,
                        "Errors that remember like this tell far less than so many readings by themselves would; the intervals"
                                + " take that into account.")
                .when(
                        goesTogether,
                        "Two intervals were made, from errors that remember and from moving blocks of the residuals; the sentences"
                                + " take the wider, the table has both.")
                .done();
    }

    private List<String> year() {
        List<String> told = years.sentences();
        return new Telling()
                .say(told)
                .say(result.year()
                        .map(year -> bought(year.backupBoughtKWh())
                                + (told.isEmpty() ? " in the year of the weather file." : " in the worst year.")))
                .say(result.year().map(FitWords::net))
                .done();
    }

    private static String net(FitResult.Year year) {
        return year.gas()
                .map(ends -> "The net energy of that year is " + both(year.netEnergyKWh()) + "; as fitted it is "
                        + GasWords.three(
                                ends.low().netKWh(),
                                year.netEnergyKWh().value(),
                                ends.high().netKWh()) + ".")
                .orElse("No gas is computed, so that its net energy cannot be judged.");
    }

    private static String bought(FittedFigure backup) {
        return backup.drawn() == 0 && backup.value() == 0
                ? "Nothing is bought for a backup heater, neither as drawn nor as fitted,"
                : "The backup heater buys " + both(backup);
    }

    private static String both(FittedFigure estimate) {
        return Words.kWh(estimate.value())
                + estimate.wider()
                        .map(range -> " (95 %: " + plain(range) + " kWh)")
                        .orElse("")
                + ", as drawn " + Words.kWh(estimate.drawn());
    }

    /** What is worth a look, for other programs too. */
    List<String> hints() {
        return new Telling()
                .say(new FitDoubtWords(result, hints).told())
                .say(hints.suspects())
                .say(hints.more())
                .done();
    }

    /** A row of the table; what the log does not tell has no value in words, whatever the search ended at. */
    static List<String> row(String name, FittedFigure estimate, String unit, boolean told) {
        return List.of(
                unit.isEmpty() ? name : name + ", " + unit,
                Numerals.three(estimate.drawn()),
                told ? Numerals.three(estimate.value()) : "not told",
                cell(estimate.remembered(), unit),
                cell(estimate.blocks(), unit));
    }

    static List<String> row(Pieces.Piece piece) {
        return List.of(
                piece.from().toString(),
                Numerals.three(piece.value()),
                Numerals.three(piece.sd()),
                piece.isApart() ? "far from the others" : "");
    }

    private static String cell(Optional<Range95> range, String unit) {
        return range.map(unit.equals("kWh") ? FitWords::plain : FitWords::ends).orElse("");
    }
}
