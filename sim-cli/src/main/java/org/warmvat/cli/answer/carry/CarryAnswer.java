package org.warmvat.cli.answer.carry;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.SetpointLines;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.Words;
import org.warmvat.question.Steadiness;
import org.warmvat.question.carry.CarryResult;
import org.warmvat.tank.Course;

/** The answer to {@code carry}. */
public final class CarryAnswer {

    private static final int HOURS_PER_DAY = 24;

    private CarryAnswer() {}

    /**
     * Tells what was found.
     *
     * @param result the findings
     * @param steadiness what it costs to be steady
     * @param asked what they are about
     * @param allowedHours hours short allowed
     */
    public static Document of(CarryResult result, Optional<Steadiness> steadiness, Asked asked, double allowedHours) {
        Draft draft = Draft.of(asked, "can the sun carry it alone?");
        new CarryWords(result, asked, allowedHours).tell(draft);
        SteadyWords.tell(draft, steadiness, asked);
        figures(draft, result, allowedHours);
        SeasonSentences.Apart.of(asked.design(), result.firstDay(), result.lastDay())
                .figures(draft, asked.design());
        csv(draft, result);
        return draft.warn(Warnings.worst(List.of(
                        result.alone().course().warnings(),
                        result.withBackup().course().warnings())))
                .table(halfMonths(result, asked))
                .table(limits(result))
                .pictures(() -> List.of(picture(result, asked)))
                .done();
    }

    private static Drawing picture(CarryResult result, Asked asked) {
        Course alone = result.alone().course();
        Course with = result.withBackup().course();
        LineChart chart = LineChart.overTime(
                        "carry",
                        "The sun alone, and with the backup heater",
                        alone.start(),
                        alone.end(alone.hours() - 1))
                .caption(
                        "Top: the slurry with the sun alone and with the backup on; below the dotted minimum the tank is short"
                                + " of heat. Bottom: heat the tank needed with the backup on, and what sun and backup gave, as means of"
                                + " each day.")
                .strip("slurry, °C", 3)
                .line("sun alone", Look.SLURRY, Points.ends(alone.slurryC()))
                .line("with backup", Look.OTHER_SLURRY, Points.ends(with.slurryC()));
        SetpointLines.setpoint(chart, asked.design(), alone.start(), alone.hours());
        return SetpointLines.minimum(chart, asked.design(), alone.start(), alone.hours())
                .stripWithZero("heat, W", 50)
                .line("heat needed", Look.NEED, Points.means(with.heat().needW(), HOURS_PER_DAY))
                .line("heat from the sun", Look.SUN, Points.means(with.heat().solarW(), HOURS_PER_DAY))
                .line(
                        "heat from the backup",
                        Look.BACKUP,
                        Points.means(with.heat().backupW(), HOURS_PER_DAY));
    }

    private static Table halfMonths(CarryResult result, Asked asked) {
        return new Table(
                "Heat missing by half-month with the backup heater on, and hours short without it",
                List.of("", "heat needed, kWh", "from the sun, kWh", "missing, kWh", "hours short, sun alone"),
                result.withBackup().halves().stream()
                        .map(half -> List.of(
                                asked.day(half.firstDay()) + " to " + asked.day(half.lastDay()),
                                Words.number(half.needKWh()),
                                Words.number(half.solarKWh()),
                                Words.number(half.shortfallKWh()),
                                Words.hours(half.shortHoursAlone())))
                        .toList());
    }

    private static Table limits(CarryResult result) {
        return new Table(
                "What binds: one change at a time",
                List.of(
                        "",
                        "carried",
                        "hours short",
                        "warm days",
                        "lowest, °C",
                        "highest, °C",
                        "methane, Nm³",
                        "hours too hot to digest",
                        "stagnation, h"),
                result.limits().stream()
                        .map(one -> List.of(
                                CarryWords.name(one.what()),
                                CarryWords.word(one.warmth().verdict()),
                                Words.hours(one.warmth().shortHours()),
                                Integer.toString(one.warmth().warmDays()),
                                Words.fixed(one.warmth().leastC(), 1),
                                Words.fixed(one.price().mostC(), 1),
                                one.price().methaneNm3().isPresent()
                                        ? Words.number(one.price().methaneNm3().getAsDouble())
                                        : "–",
                                Words.hours(one.price().tooHotHours()),
                                Words.hours(one.price().stagnationHours())))
                        .toList());
    }

    private static void figures(Draft draft, CarryResult result, double allowedHours) {
        CarryResult.Alone alone = result.alone();
        CarryResult.WithBackup with = result.withBackup();
        CarryResult.Area area = result.area();
        draft.figure("first_day", result.firstDay())
                .figure("last_day", result.lastDay())
                .figure("allowed_short_hours", allowedHours)
                .figure("carried", CarryWords.word(alone.warmth().verdict()))
                .figure("hours", alone.course().hours())
                .figure(
                        "hours_at_or_above_floor",
                        alone.course().hours() - alone.warmth().shortHours())
                .figure("hours_short", alone.warmth().shortHours())
                .figure("days", days(result))
                .figure("days_at_or_above_floor", alone.warmth().warmDays())
                .figure("first_day_below", alone.firstDayBelow())
                .figure("least_c", alone.warmth().leastC())
                .figure("least_day", alone.leastDay())
                .figure("carries_from", result.carriesFrom())
                .figure("backup_stood_in", with.stoodIn())
                .figure("shortfall_kwh", with.shortfallKWh())
                .figure("bought_kwh", with.boughtKWh())
                .figure("half_months", halves(result))
                .figure("collector_m2", area.presentM2())
                .figure("collector_needed_m2", area.smallestM2())
                .figure("collector_bound_m2", area.boundM2())
                .figure("collector_monotone", area.monotone())
                .figure("limits", limitRows(result));
    }

    static long days(CarryResult result) {
        LocalDate end = result.lastDay().plusDays(1);
        return result.firstDay().datesUntil(end).count();
    }

    private static List<Map<String, Object>> halves(CarryResult result) {
        return result.withBackup().halves().stream()
                .map(half -> Draft.row(
                        "first_day", half.firstDay(),
                        "last_day", half.lastDay(),
                        "need_kwh", half.needKWh(),
                        "solar_heat_kwh", half.solarKWh(),
                        "shortfall_kwh", half.shortfallKWh(),
                        "hours_short_alone", half.shortHoursAlone()))
                .toList();
    }

    private static List<Map<String, Object>> limitRows(CarryResult result) {
        return result.limits().stream()
                .map(one -> Draft.row(
                        "relaxed", CarryWords.name(one.what()),
                        "verdict", CarryWords.word(one.warmth().verdict()),
                        "hours_short", one.warmth().shortHours(),
                        "days_at_or_above_floor", one.warmth().warmDays(),
                        "least_c", one.warmth().leastC(),
                        "most_c", one.price().mostC(),
                        "methane_nm3", one.price().methaneNm3(),
                        "hours_too_hot_to_digest", one.price().tooHotHours(),
                        "stagnation_hours", one.price().stagnationHours()))
                .toList();
    }

    private static void csv(Draft draft, CarryResult result) {
        Course alone = result.alone().course();
        Course with = result.withBackup().course();
        Map<String, double[]> hourly = new LinkedHashMap<>();
        hourly.put("slurry_alone_c", alone.slurryC());
        hourly.put("slurry_with_backup_c", with.slurryC());
        hourly.put("air_c", alone.airC());
        hourly.put("solar_heat_alone_w", alone.heat().solarW());
        hourly.put("solar_heat_with_backup_w", with.heat().solarW());
        hourly.put("backup_heat_w", with.heat().backupW());
        hourly.put("need_with_backup_w", with.heat().needW());
        Csv areas = Csv.of(List.of("collector_m2", "hours_short"));
        result.area().tried().forEach(one -> areas.numbers(one.areaM2(), one.shortHours()));
        draft.csv("hourly.csv", Csv.hourly(alone.start(), hourly))
                .csv("half_months.csv", Csv.ofRows(halves(result)))
                .csv("limits.csv", Csv.ofRows(limitRows(result)))
                .csv("areas.csv", areas);
    }
}
