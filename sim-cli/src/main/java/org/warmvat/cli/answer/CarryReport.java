package org.warmvat.cli.answer;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.StripChart;
import org.warmvat.result.Course;
import org.warmvat.study.CarryResult;

/** Tells the findings of carry. */
public final class CarryReport {

    /** Names of its tables. */
    public static final List<String> TABLES = List.of("hourly.csv", "half_months.csv", "limits.csv", "areas.csv");

    /** Names of its pictures. */
    public static final List<String> PICTURES = List.of("carry");

    private static final int HOURS_PER_DAY = 24;

    private CarryReport() {}

    /**
     * The findings told.
     *
     * @param result the findings
     * @param asked what they are about
     * @param allowedHours hours short allowed
     * @param pictures the pictures
     */
    public static StudyResults of(CarryResult result, Asked asked, double allowedHours, List<Picture> pictures) {
        return new StudyResults(
                "carry",
                asked.design().title() + ": can the sun carry it alone?",
                asked.subtitle(),
                new CarryWords(result, asked, allowedHours).answer(),
                List.of(halfMonths(result, asked), limits(result)),
                figures(result, allowedHours),
                csv(result),
                pictures,
                asked.warnings(),
                asked.assumed());
    }

    /** Draws it. */
    public static List<Picture> pictures(CarryResult result, Asked asked) {
        Course alone = result.alone().course();
        Course with = result.withBackup().course();
        return List.of(StripChart.overTime(
                        "carry",
                        "The sun alone, and with the backup",
                        "Top: the slurry with the sun alone and with the backup on; below the dotted floor the tank is short of"
                                + " heat. Bottom: heat the tank needed with the backup on, and what sun and backup gave, as"
                                + " means of each day.",
                        alone.start(),
                        alone.end(alone.hours() - 1))
                .temperatures("slurry, °C", 3)
                .line("sun alone", StripChart.ends(alone.start(), alone.slurryC()), StripChart.Line.SLURRY)
                .line("with backup", StripChart.ends(with.start(), with.slurryC()), StripChart.Line.OTHER_SLURRY)
                .level("set-point", asked.design().control().setpointC(), StripChart.Line.SETPOINT)
                .level("floor", asked.design().control().floorC(), StripChart.Line.FLOOR)
                .amounts("heat, W", 50)
                .line("heat needed", daily(with, with.heat().needW()), StripChart.Line.NEED)
                .line("heat from the sun", daily(with, with.heat().solarW()), StripChart.Line.SUN)
                .line("heat from the backup", daily(with, with.heat().backupW()), StripChart.Line.BACKUP)
                .picture());
    }

    private static double[][] daily(Course course, double[] values) {
        return StripChart.steps(course.start(), values, HOURS_PER_DAY);
    }

    private static Table halfMonths(CarryResult result, Asked asked) {
        List<List<String>> rows = result.withBackup().halves().stream()
                .map(half -> List.of(
                        days(half.firstDay(), half.lastDay(), asked.withYear()),
                        Words.number(half.needKWh()),
                        Words.number(half.solarKWh()),
                        Words.number(half.shortfallKWh()),
                        Words.hours(half.shortHoursAlone())))
                .toList();
        return new Table(
                "Shortfall by half-month: with the backup on, and hours short without it",
                List.of("", "heat needed, kWh", "from the sun, kWh", "shortfall, kWh", "hours short, sun alone"),
                rows);
    }

    private static String days(LocalDate first, LocalDate last, boolean withYear) {
        return Words.day(first, withYear) + " to " + Words.day(last, withYear);
    }

    private static Table limits(CarryResult result) {
        List<List<String>> rows = result.limits().stream()
                .map(one -> List.of(
                        CarryWords.name(one.what()),
                        CarryWords.word(one.warmth().verdict()),
                        Words.hours(one.warmth().shortHours()),
                        Integer.toString(one.warmth().warmDays()),
                        Words.fixed(one.warmth().leastC(), 1)))
                .toList();
        return new Table(
                "What binds: one thing relaxed at a time",
                List.of("", "carried", "hours short", "warm days", "lowest, °C"),
                rows);
    }

    private static Map<String, Object> figures(CarryResult result, double allowedHours) {
        CarryResult.Alone alone = result.alone();
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("first_day", result.firstDay().toString());
        figures.put("last_day", result.lastDay().toString());
        figures.put("allowed_short_hours", allowedHours);
        figures.put("verdict", CarryWords.word(alone.warmth().verdict()));
        figures.put("hours", alone.course().hours());
        figures.put(
                "hours_at_or_above_floor",
                alone.course().hours() - alone.warmth().shortHours());
        figures.put("hours_short", alone.warmth().shortHours());
        figures.put(
                "days",
                result.firstDay().datesUntil(result.lastDay().plusDays(1)).count());
        figures.put("days_at_or_above_floor", alone.warmth().warmDays());
        figures.put(
                "first_day_below",
                alone.firstDayBelow().map(LocalDate::toString).orElse(null));
        figures.put("least_c", alone.warmth().leastC());
        figures.put("least_day", alone.leastDay().toString());
        figures.put(
                "carries_from", result.carriesFrom().map(LocalDate::toString).orElse(null));
        figures.put("backup_stood_in", result.withBackup().stoodIn());
        figures.put("shortfall_kwh", result.withBackup().shortfallKWh());
        figures.put("bought_kwh", result.withBackup().boughtKWh());
        figures.put(
                "half_months",
                result.withBackup().halves().stream().map(CarryReport::half).toList());
        figures.put("collector_m2", result.area().presentM2());
        figures.put("collector_needed_m2", orNull(result.area().smallestM2()));
        figures.put("collector_bound_m2", result.area().boundM2());
        figures.put("collector_monotone", result.area().monotone());
        figures.put("limits", result.limits().stream().map(CarryReport::limit).toList());
        return figures;
    }

    /** A number that may be absent, as figures hold it. */
    static Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static Map<String, Object> half(CarryResult.Half half) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("first_day", half.firstDay().toString());
        figures.put("last_day", half.lastDay().toString());
        figures.put("need_kwh", half.needKWh());
        figures.put("solar_heat_kwh", half.solarKWh());
        figures.put("shortfall_kwh", half.shortfallKWh());
        figures.put("hours_short_alone", half.shortHoursAlone());
        return figures;
    }

    private static Map<String, Object> limit(CarryResult.Relaxed relaxed) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("relaxed", CarryWords.name(relaxed.what()));
        figures.put("verdict", CarryWords.word(relaxed.warmth().verdict()));
        figures.put("hours_short", relaxed.warmth().shortHours());
        figures.put("days_at_or_above_floor", relaxed.warmth().warmDays());
        figures.put("least_c", relaxed.warmth().leastC());
        return figures;
    }

    private static Map<String, byte[]> csv(CarryResult result) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Course alone = result.alone().course();
        Course with = result.withBackup().course();
        files.put(
                "hourly.csv",
                new CourseCsv()
                        .temperature("slurry_alone_c", alone.slurryC())
                        .temperature("slurry_with_backup_c", with.slurryC())
                        .temperature("air_c", alone.airC())
                        .power("solar_heat_alone_w", alone.heat().solarW())
                        .power("solar_heat_with_backup_w", with.heat().solarW())
                        .power("backup_heat_w", with.heat().backupW())
                        .power("need_with_backup_w", with.heat().needW())
                        .from(alone.start()));
        files.put(
                "half_months.csv",
                CsvRows.of(result.withBackup().halves().stream()
                        .map(CarryReport::half)
                        .toList()));
        files.put(
                "limits.csv",
                CsvRows.of(result.limits().stream().map(CarryReport::limit).toList()));
        ExactCsv areas = new ExactCsv();
        areas.header(List.of("collector_m2", "hours_short"));
        result.area().tried().forEach(one -> areas.row(one.areaM2(), one.shortHours()));
        files.put("areas.csv", areas.bytes());
        return files;
    }
}
