package org.warmvat.cli.answer.carry;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Csv;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.SeasonSentences;
import org.warmvat.cli.answer.SetpointLines;
import org.warmvat.cli.answer.SteadyWords;
import org.warmvat.cli.answer.Subject;
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

    private static final Columns<CarryResult.Relaxed> LIMITS = new Columns<CarryResult.Relaxed>()
            .text("relaxed", "", one -> CarryWords.name(one.what()))
            .text("verdict", "carried", one -> CarryWords.word(one.warmth().verdict()))
            .number("hours_short", "hours short", one -> one.warmth().shortHours(), Words::hours)
            .number("days_at_or_above_floor", "warm days", one -> one.warmth().warmDays(), Words::whole)
            .number("least_c", "lowest, °C", one -> one.warmth().leastC(), Words::tenth)
            .number("most_c", "highest, °C", one -> one.price().mostC(), Words::tenth)
            .number("methane_nm3", "methane, Nm³", one -> one.price().methaneNm3(), Words::number)
            .number(
                    "hours_too_hot_to_digest",
                    "hours too hot to digest",
                    one -> one.price().tooHotHours(),
                    Words::hours)
            .number("stagnation_hours", "stagnation, h", one -> one.price().stagnationHours(), Words::hours);

    private CarryAnswer() {}

    /**
     * Tells what was found.
     *
     * @param result the findings
     * @param steadiness what it costs to be steady
     * @param asked what they are about
     * @param allowedHours hours short allowed
     */
    public static Document of(CarryResult result, Optional<Steadiness> steadiness, Subject asked, double allowedHours) {
        Draft draft = Draft.of(asked, "can the sun carry it alone?");
        new CarryWords(result, asked, allowedHours).tell(draft);
        SteadyWords.tell(draft, steadiness, asked);
        figures(draft, result, asked, allowedHours);
        SeasonSentences.Apart.of(asked.design(), result.firstDay(), result.lastDay())
                .figures(draft, asked.design());
        csv(draft, result, asked);
        return draft.warn(Warnings.worst(List.of(
                        result.alone().course().warnings(),
                        result.withBackup().course().warnings())))
                .table(halves(asked)
                        .table(
                                "Heat missing by half-month with the backup heater on, and hours short without it",
                                result.withBackup().halves()))
                .table(LIMITS.table("What binds: one change at a time", result.limits()))
                .pictures(() -> List.of(picture(result, asked)))
                .done();
    }

    private static Drawing picture(CarryResult result, Subject asked) {
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

    private static Columns<CarryResult.Half> halves(Subject asked) {
        return new Columns<CarryResult.Half>()
                .value("first_day", CarryResult.Half::firstDay)
                .value("last_day", CarryResult.Half::lastDay)
                .cell("", half -> asked.day(half.firstDay()) + " to " + asked.day(half.lastDay()))
                .number("need_kwh", "heat needed, kWh", CarryResult.Half::needKWh, Words::number)
                .number("solar_heat_kwh", "from the sun, kWh", CarryResult.Half::solarKWh, Words::number)
                .number("shortfall_kwh", "missing, kWh", CarryResult.Half::shortfallKWh, Words::number)
                .number("hours_short_alone", "hours short, sun alone", CarryResult.Half::shortHoursAlone, Words::hours);
    }

    private static void figures(Draft draft, CarryResult result, Subject asked, double allowedHours) {
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
                .figure("half_months", halves(asked).rows(with.halves()))
                .figure("collector_m2", area.presentM2())
                .figure("collector_needed_m2", area.smallestM2())
                .figure("collector_bound_m2", area.boundM2())
                .figure("collector_monotone", area.monotone())
                .figure("limits", LIMITS.rows(result.limits()));
    }

    static long days(CarryResult result) {
        LocalDate end = result.lastDay().plusDays(1);
        return result.firstDay().datesUntil(end).count();
    }

    private static void csv(Draft draft, CarryResult result, Subject asked) {
        Csv areas = Csv.of(List.of("collector_m2", "hours_short"));
        result.area().tried().forEach(one -> areas.numbers(one.areaM2(), one.shortHours()));
        draft.csv(
                        "hourly.csv",
                        hourly(result.alone().course(), result.withBackup().course()))
                .csv("half_months.csv", halves(asked).csv(result.withBackup().halves()))
                .csv("limits.csv", LIMITS.csv(result.limits()))
                .csv("areas.csv", areas);
    }

    private static Csv hourly(Course alone, Course with) {
        Map<String, double[]> hourly = new LinkedHashMap<>();
        hourly.put("slurry_alone_c", alone.slurryC());
        hourly.put("slurry_with_backup_c", with.slurryC());
        hourly.put("air_c", alone.airC());
        hourly.put("solar_heat_alone_w", alone.heat().solarW());
        hourly.put("solar_heat_with_backup_w", with.heat().solarW());
        hourly.put("backup_heat_w", with.heat().backupW());
        hourly.put("need_with_backup_w", with.heat().needW());
        return Csv.hourly(alone.start(), hourly);
    }
}
