package org.warmvat.cli.answer;

import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.StripChart;
import org.warmvat.result.Course;
import org.warmvat.study.HoldResult;

/** Tells the findings of hold. */
public final class HoldReport {

    /** Names of its tables. */
    public static final List<String> TABLES = List.of("cooling.csv", "warm_up.csv", "months.csv");

    /** Names of its pictures. */
    public static final List<String> PICTURES = List.of("cooling", "warm_up");

    private static final List<String> SHORT_TIME = List.of(
            "A failed heater and a frozen outlet pipe often come together: when the tank cools, look at the gas line and the"
                    + " outlet before restarting feed.",
            "While the power is off no alarm, fan or gas detector on the same supply works: air the place before entering.");

    private HoldReport() {}

    /**
     * The findings told.
     *
     * @param result the findings
     * @param asked what they are about
     * @param pictures the pictures
     */
    public static StudyResults of(HoldResult result, Asked asked, List<Picture> pictures) {
        List<String> warnings = new ArrayList<>(asked.warnings());
        warnings.addAll(SHORT_TIME);
        List<String> assumed = new ArrayList<>(asked.assumed());
        assumed.add(
                "A failed heater takes its pump and circuit with it. In a power cut digestion goes on with what is in the"
                        + " tank. During the warm-up feed, mixer and gas go on as usual.");
        return new StudyResults(
                "hold",
                asked.design().title() + ": how long does it hold its heat?",
                asked.subtitle(),
                new HoldWords(result, asked).answer(),
                tables(result, asked),
                figures(result),
                csv(result),
                pictures,
                warnings,
                assumed);
    }

    /** Draws them. */
    public static List<Picture> pictures(HoldResult result, Asked asked) {
        return List.of(cooling(result, asked), warmUp(result, asked));
    }

    private static Picture cooling(HoldResult result, Asked asked) {
        double longest = result.failures().stream()
                .mapToDouble(failure -> failure.course().hours())
                .max()
                .orElse(1);
        StripChart chart = StripChart.over(
                        "cooling",
                        "When the heat fails at the worst moment",
                        "The slurry from the failure on, for a failed heater and for a power cut, each from its own worst"
                                + " moment; below it the outdoor air in those hours.",
                        "hours since the failure",
                        longest)
                .temperatures("slurry, °C", 3);
        result.failures()
                .forEach(failure -> chart.line(
                        name(failure.cause()),
                        StripChart.afterHours(failure.startC(), failure.course().slurryC()),
                        line(failure.cause())));
        chart.level("floor", asked.design().control().floorC(), StripChart.Line.FLOOR);
        chart.temperatures("air, °C", 5);
        result.failures()
                .forEach(failure -> chart.line(
                        "air, " + name(failure.cause()),
                        StripChart.afterHours(
                                failure.course().airC()[0], failure.course().airC()),
                        failure.cause() == HoldResult.Cause.HEATER ? StripChart.Line.AIR : StripChart.Line.MARK));
        return chart.picture();
    }

    private static StripChart.Line line(HoldResult.Cause cause) {
        return cause == HoldResult.Cause.HEATER ? StripChart.Line.SLURRY : StripChart.Line.OTHER_SLURRY;
    }

    private static Picture warmUp(HoldResult result, Asked asked) {
        double longest = result.warmUps().stream()
                .mapToDouble(warmUp -> warmUp.course().hours())
                .max()
                .orElse(1);
        StripChart chart = StripChart.over(
                        "warm_up",
                        "Warm-up from a cold fill",
                        "The slurry from the cold fill to the set-point, with the sun and without; below it the heat of backup"
                                + " and sun as means of each hour.",
                        "hours since the fill",
                        longest)
                .temperatures("slurry, °C", 3);
        for (HoldResult.WarmUp one : result.warmUps()) {
            chart.line(
                    one.withSun() ? "with the sun" : "without the sun",
                    StripChart.afterHours(one.fillC(), one.course().slurryC()),
                    one.withSun() ? StripChart.Line.SLURRY : StripChart.Line.OTHER_SLURRY);
        }
        chart.level("set-point", asked.design().control().setpointC(), StripChart.Line.SETPOINT);
        HoldResult.WarmUp first = result.warmUps().get(0);
        Course.Heat heat = first.course().heat();
        return chart.amounts("heat, W", 50)
                .line(
                        "heat from the backup",
                        StripChart.afterHours(heat.backupW()[0], heat.backupW()),
                        StripChart.Line.BACKUP)
                .line("heat from the sun", StripChart.afterHours(heat.solarW()[0], heat.solarW()), StripChart.Line.SUN)
                .picture();
    }

    private static String name(HoldResult.Cause cause) {
        return cause == HoldResult.Cause.HEATER ? "failed heater" : "power cut";
    }

    private static List<Table> tables(HoldResult result, Asked asked) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < result.temperaturesC().size(); i++) {
            List<String> row =
                    new ArrayList<>(List.of(Words.celsius(result.temperaturesC().get(i))));
            for (HoldResult.Failure failure : result.failures()) {
                row.add(cell(failure.hours().get(i)));
            }
            rows.add(row);
        }
        List<String> header = new ArrayList<>(List.of("hours until"));
        result.failures().forEach(failure -> header.add(name(failure.cause())));
        List<Table> tables = new ArrayList<>(List.of(new Table("From the worst moment", List.copyOf(header), rows)));
        if (result.failures().get(0).usual().starts() > 1) {
            header.set(0, "failing in");
            tables.add(new Table(
                    "Shortest time to " + Words.celsius(result.temperaturesC().get(0)) + " by month, hours",
                    header,
                    months(result, asked)));
        }
        return tables;
    }

    private static List<List<String>> months(HoldResult result, Asked asked) {
        List<List<String>> rows = new ArrayList<>();
        for (Month month : asked.months()) {
            List<String> row = new ArrayList<>(List.of(Words.month(month)));
            for (HoldResult.Failure failure : result.failures()) {
                row.add(cell(failure.usual().worstByMonth().get(month.getValue() - 1)));
            }
            rows.add(row);
        }
        return rows;
    }

    private static String cell(OptionalDouble hours) {
        return hours.isPresent() ? Words.fixed(hours.getAsDouble(), 1) : "–";
    }

    private static Map<String, Object> figures(HoldResult result) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("time_constant_h", result.timeConstantH());
        for (HoldResult.Failure failure : result.failures()) {
            figures.put(name(failure.cause()).replace(' ', '_'), failure(result, failure));
        }
        figures.put("warm_up", result.warmUps().stream().map(HoldReport::warmUp).toList());
        return figures;
    }

    private static Map<String, Object> failure(HoldResult result, HoldResult.Failure failure) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("from", failure.from().toString());
        figures.put("slurry_at_failure_c", failure.startC());
        List<Map<String, Object>> reached = new ArrayList<>();
        for (int i = 0; i < result.temperaturesC().size(); i++) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("temperature_c", result.temperaturesC().get(i));
            one.put("hours", CarryReport.orNull(failure.hours().get(i)));
            reached.add(one);
        }
        figures.put("reached", reached);
        figures.put("starts", failure.usual().starts());
        figures.put("middle_hours", CarryReport.orNull(failure.usual().middleHours()));
        figures.put("followed_hours", failure.usual().limitHours());
        return figures;
    }

    /** A warm-up as figures. */
    static Map<String, Object> warmUp(HoldResult.WarmUp warmUp) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("with_sun", warmUp.withSun());
        figures.put("from", warmUp.from().toString());
        figures.put("fill_c", warmUp.fillC());
        figures.put("hours", CarryReport.orNull(warmUp.hours()));
        figures.put("solar_heat_kwh", warmUp.heat().solarKWh());
        figures.put("backup_heat_kwh", warmUp.heat().backupKWh());
        figures.put("backup_bought_kwh", warmUp.heat().boughtKWh());
        return figures;
    }

    private static Map<String, byte[]> csv(HoldResult result) {
        CourseCsv cooling = new CourseCsv();
        for (HoldResult.Failure failure : result.failures()) {
            String key = name(failure.cause()).replace(' ', '_');
            cooling.temperature(key + "_slurry_c", failure.course().slurryC());
            cooling.temperature(key + "_air_c", failure.course().airC());
        }
        CourseCsv warmUp = new CourseCsv();
        for (HoldResult.WarmUp one : result.warmUps()) {
            String key = one.withSun() ? "with_sun" : "without_sun";
            warmUp.temperature(key + "_slurry_c", one.course().slurryC());
            warmUp.power(key + "_backup_heat_w", one.course().heat().backupW());
            warmUp.power(key + "_solar_heat_w", one.course().heat().solarW());
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("cooling.csv", cooling.counted());
        files.put("warm_up.csv", warmUp.counted());
        files.put("months.csv", CsvRows.of(monthRows(result)));
        return files;
    }

    private static List<Map<String, Object>> monthRows(HoldResult result) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Month month : Month.values()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("month", String.format(Locale.ROOT, "%02d", month.getValue()));
            for (HoldResult.Failure failure : result.failures()) {
                row.put(
                        name(failure.cause()).replace(' ', '_') + "_shortest_hours",
                        CarryReport.orNull(failure.usual().worstByMonth().get(month.getValue() - 1)));
            }
            rows.add(row);
        }
        return rows;
    }
}
