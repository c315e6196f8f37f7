package org.warmvat.cli.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.StripChart;
import org.warmvat.result.Course;
import org.warmvat.study.BackupResult;
import org.warmvat.study.BackupStudy;

/** Tells the findings of backup. */
public final class BackupReport {

    /** Names of its tables. */
    public static final List<String> TABLES = List.of("curve.csv", "spell.csv", "warm_ups.csv");

    /** Names of its pictures. */
    public static final List<String> PICTURES = List.of("curve", "coldest_spell");

    private BackupReport() {}

    /**
     * The findings told.
     *
     * @param result the findings
     * @param asked what they are about
     * @param question what was asked
     * @param pictures the pictures
     */
    public static StudyResults of(
            BackupResult result, Asked asked, BackupStudy.Question question, List<Picture> pictures) {
        List<String> assumed = new ArrayList<>(asked.assumed());
        assumed.add("The common sizes are common practice, no source: "
                + Words.list(question.commonSizesW().stream()
                        .map(w -> Words.number(w))
                        .toList()) + " W.");
        assumed.add("During the warm-up feed, mixer and gas go on as usual, which is on the safe side.");
        return new StudyResults(
                "backup",
                asked.design().title() + ": which heater?",
                asked.subtitle(),
                new BackupWords(result, asked, question).answer(),
                tables(result, asked),
                figures(result, question),
                csv(result),
                pictures,
                asked.warnings(),
                assumed);
    }

    /** Draws them. */
    public static List<Picture> pictures(BackupResult result, Asked asked) {
        return List.of(curvePicture(result), spellPicture(result, asked));
    }

    private static Picture curvePicture(BackupResult result) {
        List<BackupResult.Point> points = result.curve().points();
        StripChart chart = StripChart.over(
                        "curve",
                        "Hours short and energy bought, by power of the heater",
                        "Top: hours below the floor, in the worst of the weather files. Middle: degree-hours below it. Bottom:"
                                + " energy bought; once nothing is short, more power buys no more.",
                        "rated power of the heater, W",
                        points.get(points.size() - 1).ratedW())
                .amounts("hours short", 1)
                .line("hours short", curve(points, 0), StripChart.Line.SLURRY);
        chart.amounts("K h short", 1).line("degree-hours short", curve(points, 1), StripChart.Line.OTHER_SLURRY);
        return chart.amounts("bought, kWh", 1)
                .line("energy bought", curve(points, 2), StripChart.Line.NEED)
                .picture();
    }

    private static double[][] curve(List<BackupResult.Point> points, int which) {
        double[][] curve = new double[2][points.size()];
        for (int i = 0; i < points.size(); i++) {
            BackupResult.Point point = points.get(i);
            curve[0][i] = point.ratedW();
            curve[1][i] = which == 0 ? point.shortHours() : which == 1 ? point.shortKelvinHours() : point.boughtKWh();
        }
        return curve;
    }

    private static Picture spellPicture(BackupResult result, Asked asked) {
        BackupResult.Spell spell = result.spell();
        Course chosen = spell.chosen();
        Course smaller = spell.smaller();
        return StripChart.overTime(
                        "coldest_spell",
                        "The spell that decides",
                        "Top: the slurry with the chosen heater and with a smaller one, a tenth below what the floor asks for."
                                + " Middle: outdoor air. Bottom: heat from backup and sun with the chosen heater, as means of"
                                + " each hour.",
                        chosen.start(),
                        chosen.end(chosen.hours() - 1))
                .temperatures("slurry, °C", 1.5)
                .line(Math.round(spell.chosenW()) + " W", ends(chosen, chosen.slurryC()), StripChart.Line.SLURRY)
                .line(
                        Math.round(spell.smallerW()) + " W",
                        ends(smaller, smaller.slurryC()),
                        StripChart.Line.OTHER_SLURRY)
                .level("set-point", asked.design().control().setpointC(), StripChart.Line.SETPOINT)
                .level("floor", asked.design().control().floorC(), StripChart.Line.FLOOR)
                .temperatures("air, °C", 5)
                .line("outdoor air", ends(chosen, chosen.airC()), StripChart.Line.AIR)
                .amounts("heat, W", 50)
                .line("heat from the backup", steps(chosen, chosen.heat().backupW()), StripChart.Line.BACKUP)
                .line("heat from the sun", steps(chosen, chosen.heat().solarW()), StripChart.Line.SUN)
                .picture();
    }

    private static double[][] ends(Course course, double[] values) {
        return StripChart.ends(course.start(), values);
    }

    private static double[][] steps(Course course, double[] values) {
        return StripChart.steps(course.start(), values, 1);
    }

    private static List<Table> tables(BackupResult result, Asked asked) {
        return result.curve().chosen().size() == 1
                ? List.of(curve(result))
                : List.of(curve(result), files(result, asked));
    }

    private static Table files(BackupResult result, Asked asked) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < asked.weathers().size(); i++) {
            BackupResult.Point chosen = result.curve().chosen().get(i);
            rows.add(List.of(
                    asked.fileName(i),
                    Words.hours(chosen.shortHours()),
                    Words.hours(result.spell().smallerShortHours().get(i)),
                    result.warmUps().get(i).hours().isPresent()
                            ? Words.fixed(result.warmUps().get(i).hours().getAsDouble(), 0)
                            : "–",
                    Words.number(chosen.boughtKWh())));
        }
        return new Table(
                "File by file, with the chosen heater of "
                        + Words.fixed(result.spell().chosenW(), 0) + " W",
                List.of(
                        "",
                        "hours short",
                        "with " + Words.fixed(result.spell().smallerW(), 0) + " W",
                        "warm-up, hours",
                        "bought, kWh"),
                rows);
    }

    private static Table curve(BackupResult result) {
        return new Table(
                "Hours short and energy bought, by power of the heater",
                List.of("power, W", "hours short", "degree-hours short, K h", "bought, kWh"),
                result.curve().points().stream()
                        .map(point -> List.of(
                                Words.fixed(point.ratedW(), 0),
                                Words.hours(point.shortHours()),
                                Words.number(point.shortKelvinHours()),
                                Words.number(point.boughtKWh())))
                        .toList());
    }

    private static Map<String, Object> figures(BackupResult result, BackupStudy.Question question) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("allowed_short_hours", question.shortHours());
        figures.put("warm_up_days", question.warmUp().days());
        figures.put("fill_c", question.warmUp().fillC());
        figures.put("sun_ignored", question.ignoreSun());
        figures.put("cold_spell_k", question.coldSpellK());
        figures.put("element_assumed", result.elementAssumed());
        figures.put("smallest_w", CarryReport.orNull(result.need().smallestW()));
        figures.put("smallest_for_floor_w", CarryReport.orNull(result.need().forFloorW()));
        figures.put("smallest_for_warm_up_w", CarryReport.orNull(result.need().forWarmUpW()));
        figures.put("common_size_w", CarryReport.orNull(result.need().commonW()));
        figures.put("coil_passes_w", CarryReport.orNull(result.coil().passesW()));
        figures.put("coil_is_limit", result.coil().isLimit());
        figures.put("coil_m2", CarryReport.orNull(result.coil().areaM2()));
        figures.put("coil_needed_m2", CarryReport.orNull(result.coil().neededM2()));
        figures.put("monotone", result.curve().monotone());
        figures.put(
                "curve",
                result.curve().points().stream().map(BackupReport::point).toList());
        figures.put(
                "files",
                IntStream.range(0, result.warmUps().size())
                        .mapToObj(i -> file(result, i))
                        .toList());
        figures.put(
                "warm_ups", result.warmUps().stream().map(HoldReport::warmUp).toList());
        figures.put("hardest_moment", result.spell().worst().toString());
        figures.put("handbook", handbook(result.handbook()));
        return figures;
    }

    private static Map<String, Object> handbook(BackupResult.Handbook handbook) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("cold_air_c", handbook.coldC());
        figures.put("loss_w", handbook.lossW());
        figures.put("feed_w", handbook.feedW());
        figures.put("total_w", handbook.totalW());
        return figures;
    }

    private static Map<String, Object> point(BackupResult.Point point) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("rated_w", point.ratedW());
        figures.put("hours_short", point.shortHours());
        figures.put("degree_hours_short_kh", point.shortKelvinHours());
        figures.put("bought_kwh", point.boughtKWh());
        return figures;
    }

    private static Map<String, Object> file(BackupResult result, int index) {
        Map<String, Object> figures = point(result.curve().chosen().get(index));
        figures.put("smaller_w", result.spell().smallerW());
        figures.put("smaller_hours_short", result.spell().smallerShortHours().get(index));
        return figures;
    }

    private static Map<String, byte[]> csv(BackupResult result) {
        BackupResult.Spell spell = result.spell();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(
                "curve.csv",
                CsvRows.of(result.curve().points().stream()
                        .map(BackupReport::point)
                        .toList()));
        files.put(
                "spell.csv",
                new CourseCsv()
                        .temperature("slurry_chosen_c", spell.chosen().slurryC())
                        .temperature("slurry_smaller_c", spell.smaller().slurryC())
                        .temperature("air_c", spell.chosen().airC())
                        .power("backup_heat_chosen_w", spell.chosen().heat().backupW())
                        .power("solar_heat_chosen_w", spell.chosen().heat().solarW())
                        .from(spell.chosen().start()));
        files.put(
                "warm_ups.csv",
                CsvRows.of(result.warmUps().stream().map(HoldReport::warmUp).toList()));
        return files;
    }
}
