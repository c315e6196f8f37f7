package org.warmvat.cli.answer.hold;

import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.Words;
import org.warmvat.question.Steadiness;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.tank.Course;

/** The answer to {@code hold}. */
public final class HoldAnswer {

    private HoldAnswer() {}

    /**
     * Tells what was found.
     *
     * @param result the findings
     * @param steadiness what it costs to be steady
     * @param asked what they are about
     */
    public static Document of(HoldResult result, Optional<Steadiness> steadiness, Subject asked) {
        Draft draft = Draft.of(asked, "how long does it hold its heat?")
                .figure("time_constant_h", result.timeConstantH())
                .assume(
                        "A failed heater takes its pump and circuit with it.",
                        "In a power cut digestion goes on with what is in the tank.",
                        "During the warm-up feed, mixer and gas go on as usual.");
        new HoldWords(result, asked).tell(draft);
        SteadyWords.tell(draft, steadiness, asked);
        draft.warn(Warnings.worst(Stream.concat(
                        result.failures().stream().map(HoldResult.Failure::course),
                        result.warmUps().stream().map(HoldResult.WarmUp::course))
                .map(Course::warnings)
                .toList()));
        result.failures().forEach(failure -> draft.figure(key(failure), failure(result, failure)));
        draft.figure(
                        "warm_up",
                        result.warmUps().stream().map(HoldAnswer::warmUp).toList())
                .table(temperatures(result, asked))
                .csv("cooling.csv", Csv.counted(cooling(result)))
                .csv("warm_up.csv", Csv.counted(warmUps(result)))
                .csv("months.csv", Csv.ofRows(monthRows(result)));
        if (result.failures().get(0).usual().starts() > 1) {
            draft.table(months(result, asked));
        }
        return draft.pictures(() -> List.of(coolingPicture(result, asked), warmUpPicture(result, asked)))
                .done();
    }

    private static Drawing coolingPicture(HoldResult result, Subject asked) {
        double longest = result.failures().stream()
                .mapToDouble(failure -> failure.course().hours())
                .max()
                .orElse(1);
        LineChart chart = LineChart.over(
                        "cooling", "When the heat fails at the worst moment", "hours since the failure", 0, longest)
                .caption(
                        "The slurry from the failure on, for a failed heater and for a power cut, each from the moment from which"
                                + " it reaches the highest of the temperatures soonest (lower ones have worst moments of their own); below it the outdoor air in those hours.")
                .strip("slurry, °C", 3);
        for (HoldResult.Failure failure : result.failures()) {
            chart.line(
                    name(failure.cause()),
                    isHeater(failure) ? Look.SLURRY : Look.OTHER_SLURRY,
                    Points.from(failure.startC(), failure.course().slurryC()));
        }
        chart.level("minimum", Look.MINIMUM, asked.design().control().minimumC())
                .strip("air, °C", 5);
        for (HoldResult.Failure failure : result.failures()) {
            double[] airC = failure.course().airC();
            chart.line(
                    "air, " + name(failure.cause()),
                    isHeater(failure) ? Look.AIR : Look.OTHER_AIR,
                    Points.from(airC[0], airC));
        }
        return chart;
    }

    private static Drawing warmUpPicture(HoldResult result, Subject asked) {
        double longest = result.warmUps().stream()
                .mapToDouble(warmUp -> warmUp.course().hours())
                .max()
                .orElse(1);
        LineChart chart = LineChart.over("warm_up", "Warm-up from a cold fill", "hours since the fill", 0, longest)
                .caption(
                        "The slurry from the cold fill to the set-point, with the sun and without; below it the heat of backup"
                                + " heater and sun as means of each hour.")
                .strip("slurry, °C", 3);
        for (HoldResult.WarmUp one : result.warmUps()) {
            chart.line(
                    one.withSun() ? "with the sun" : "without the sun",
                    one.withSun() ? Look.SUN : Look.OTHER_SLURRY,
                    Points.from(one.fillC(), one.course().slurryC()));
        }
        chart.level("set-point", Look.SETPOINT, asked.design().control().setpointC());
        Course.Heat heat = result.warmUps().get(0).course().heat();
        return chart.stripWithZero("heat, W", 50)
                .line("heat from the backup", Look.BACKUP, Points.means(heat.backupW(), 1))
                .line("heat from the sun", Look.SUN, Points.means(heat.solarW(), 1));
    }

    private static boolean isHeater(HoldResult.Failure failure) {
        return failure.cause() == HoldResult.Cause.HEATER;
    }

    private static String name(HoldResult.Cause cause) {
        return cause == HoldResult.Cause.HEATER ? "failed heater" : "power cut";
    }

    private static String key(HoldResult.Failure failure) {
        return name(failure.cause()).replace(' ', '_');
    }

    private static Table temperatures(HoldResult result, Subject asked) {
        Columns<Integer> table = new Columns<Integer>()
                .cell("until", i -> Words.celsius(result.temperaturesC().get(i)));
        for (HoldResult.Failure failure : result.failures()) {
            table.cell(
                            name(failure.cause()) + ", hours",
                            i -> cell(failure.hours().get(i)))
                    .cell(
                            "failing on",
                            i -> asked.day(failure.worst().get(i).from().toLocalDate()));
        }
        return table.table(
                "Hours from the worst moment, which each temperature has of its own",
                IntStream.range(0, result.temperaturesC().size()).boxed().toList());
    }

    private static Table months(HoldResult result, Subject asked) {
        Columns<Month> table = new Columns<Month>().cell("failing in", Words::month);
        result.failures()
                .forEach(failure -> table.cell(name(failure.cause()), month -> cell(shortest(failure, month))));
        return table.table(
                "Shortest time to " + Words.celsius(result.temperaturesC().get(0)) + " by month, hours",
                asked.months());
    }

    private static OptionalDouble shortest(HoldResult.Failure failure, Month month) {
        return failure.usual().worstByMonth().get(month.getValue() - 1);
    }

    private static String cell(OptionalDouble hours) {
        return Words.tenth(hours.orElse(Double.NaN));
    }

    private static Map<String, Object> failure(HoldResult result, HoldResult.Failure failure) {
        return Draft.row(
                "from", failure.from(),
                "slurry_at_failure_c", failure.startC(),
                "reached",
                        IntStream.range(0, result.temperaturesC().size())
                                .mapToObj(i -> Draft.row(
                                        "temperature_c", result.temperaturesC().get(i),
                                        "hours", failure.hours().get(i),
                                        "from", failure.worst().get(i).from()))
                                .toList(),
                "starts", failure.usual().starts(),
                "middle_hours", failure.usual().middleHours(),
                "followed_hours", failure.usual().limitHours());
    }

    /** A warm-up as figures. */
    public static Map<String, Object> warmUp(HoldResult.WarmUp warmUp) {
        return Draft.row(
                "with_sun", warmUp.withSun(),
                "from", warmUp.from(),
                "fill_c", warmUp.fillC(),
                "hours", warmUp.hours(),
                "solar_heat_kwh", warmUp.heat().solarKWh(),
                "backup_heat_kwh", warmUp.heat().backupKWh(),
                "backup_bought_kwh", warmUp.heat().boughtKWh());
    }

    private static Map<String, double[]> cooling(HoldResult result) {
        Map<String, double[]> columns = new LinkedHashMap<>();
        for (HoldResult.Failure failure : result.failures()) {
            columns.put(key(failure) + "_slurry_c", failure.course().slurryC());
            columns.put(key(failure) + "_air_c", failure.course().airC());
        }
        return columns;
    }

    private static Map<String, double[]> warmUps(HoldResult result) {
        Map<String, double[]> columns = new LinkedHashMap<>();
        for (HoldResult.WarmUp one : result.warmUps()) {
            String key = one.withSun() ? "with_sun" : "without_sun";
            columns.put(key + "_slurry_c", one.course().slurryC());
            columns.put(key + "_backup_heat_w", one.course().heat().backupW());
            columns.put(key + "_solar_heat_w", one.course().heat().solarW());
        }
        return columns;
    }

    private static List<Map<String, Object>> monthRows(HoldResult result) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Month month : Month.values()) {
            Map<String, Object> row = Draft.row("month", String.format(Locale.ROOT, "%02d", month.getValue()));
            result.failures()
                    .forEach(failure ->
                            row.putAll(Draft.row(key(failure) + "_shortest_hours", shortest(failure, month))));
            rows.add(row);
        }
        return rows;
    }
}
