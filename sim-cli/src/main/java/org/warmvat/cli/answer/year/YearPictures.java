package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.warmvat.account.Hourly;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.SetpointLines;
import org.warmvat.cli.plot.Band;
import org.warmvat.cli.plot.BarChart;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.design.season.Spell;
import org.warmvat.feeding.FeedPart;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.question.year.YearResult;
import org.warmvat.stirring.MixerPart;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;

/** The pictures of a year. */
public final class YearPictures {

    /** Every name a picture may have; a run has some of them. */
    public static final Set<String> NAMES = Set.of(
            "tank_temperature",
            "heat_by_source",
            "electricity_by_consumer",
            "gas_and_net_energy",
            "worst_week",
            "winter_week",
            "spring_week",
            "summer_week",
            "first_week",
            "middle_week");

    private static final int WEEK_H = 168;
    private static final int DAY_H = 24;
    private static final int FINEST_BINS = 1100;

    private final YearResult run;
    private final Hourly hourly;

    private YearPictures(YearResult run) {
        this.run = run;
        this.hourly = run.hourly();
    }

    /** The pictures in the order in which they are read. */
    public static List<Drawing> of(YearResult run) {
        return new YearPictures(run).all();
    }

    private List<Drawing> all() {
        List<Drawing> all =
                new ArrayList<>(List.of(temperature(), heatBySource(), gasAndNetEnergy(), electricityByConsumer()));
        all.addAll(new WeekPictures(run, hourly).all());
        return all;
    }

    private Drawing temperature() {
        int binHours = hourly.hours() <= FINEST_BINS ? 1 : hourly.hours() <= FINEST_BINS * DAY_H ? DAY_H : WEEK_H;
        String bin = binHours == 1 ? "hour" : binHours == DAY_H ? "day" : "week";
        LineChart chart = LineChart.overTime(
                        "tank_temperature", "Tank temperature", hourly.start(), hourly.end(hourly.hours() - 1))
                .caption(
                        "The slurry should stay above the dotted minimum; below it the tank is short of heat. Above the"
                                + " set-point only the sun and warm weather push it.")
                .strip("°C", 2)
                .band(
                        "slurry, mean of each " + bin,
                        "lowest to highest of the " + bin,
                        Look.SLURRY,
                        Band.ofEach(binHours, hourly.orZero("slurry_c")));
        SetpointLines.setpoint(chart, run.design(), hourly.start(), hourly.hours());
        if (!run.design().spells().isEmpty()) {
            shadeSpells(chart);
        }
        return SetpointLines.minimum(chart, run.design(), hourly.start(), hourly.hours());
    }

    /** The calendar's spells as bands, as often as they come. */
    private void shadeSpells(LineChart chart) {
        LocalDateTime start = hourly.start();
        int last = hourly.end(hourly.hours() - 1).getYear();
        for (Spell spell : run.design().spells()) {
            for (int year = start.getYear() - 1; year <= last; year++) {
                LocalDateTime from = spell.from().atYear(year).atStartOfDay();
                double begin = ChronoUnit.HOURS.between(start, from);
                double end = ChronoUnit.HOURS.between(start, from.plusDays(spell.lengthDays()));
                if (begin < hourly.hours() && end > 0) {
                    chart.spell(spell.name(), Math.max(0, begin), Math.min(hourly.hours(), end));
                }
            }
        }
    }

    private Drawing heatBySource() {
        List<List<Period>> weeks = weeksOf(run.days());
        return BarChart.byWeek(
                        "heat_by_source",
                        "Heat by source against need, by week",
                        "kWh a day",
                        weeks.stream().map(YearPictures::firstDay).toList())
                .caption(
                        "Bars: what warmed the slurry, a day's mean in each week. Line: what it lost through envelope, fittings"
                                + " and gas, and what the feed took. Bars above the line warm the tank, bars below it let it cool.")
                .stack("backup", Look.BACKUP, perDay(weeks, day -> day.of(BackupPart.HEAT)))
                .stack("sun", Look.SUN, perDay(weeks, day -> day.of(SolarPart.HEAT)))
                .stack("mixer's shaft", Look.SHAFT, perDay(weeks, day -> day.of(MixerPart.SHAFT)))
                .stack("reaction", Look.REACTION, perDay(weeks, day -> day.of(GasPart.REACTION)))
                .line("need", Look.NEED, perDay(weeks, YearPictures::needKWh));
    }

    private static LocalDate firstDay(List<Period> week) {
        return LocalDate.parse(week.get(0).label());
    }

    private static double needKWh(Period day) {
        return Lines.lossKWh(day) + day.of(FeedPart.FEED) + day.of(GasPart.GAS_LOSS);
    }

    /** Weeks of seven days; the last takes up to three odd days more, or is itself short. */
    static List<List<Period>> weeksOf(List<Period> days) {
        List<List<Period>> weeks = new ArrayList<>();
        for (int first = 0; first < days.size(); ) {
            int left = days.size() - first;
            int length = left < 11 ? left : 7;
            weeks.add(days.subList(first, first + length));
            first += length;
        }
        return weeks;
    }

    private static double[] perDay(List<List<Period>> weeks, ToDoubleFunction<Period> kWh) {
        return weeks.stream()
                .mapToDouble(week -> week.stream().mapToDouble(kWh).sum()
                        / week.stream().mapToDouble(Period::hours).sum()
                        * DAY_H)
                .toArray();
    }

    private Drawing electricityByConsumer() {
        BarChart chart = byMonth("electricity_by_consumer", "Electricity by consumer, by month")
                .caption(
                        "What the tank's machinery drew; the electricity of an electric backup heater is not in here.");
        List<Line> consumers =
                run.whole().books().lines().stream().filter(Meter::isConsumer).toList();
        for (int i = 0; i < consumers.size(); i++) {
            Line consumer = consumers.get(i);
            chart.stack(consumer.name(), Look.nth(i), months(month -> month.of(consumer)));
        }
        return chart;
    }

    private Drawing gasAndNetEnergy() {
        return byMonth("gas_and_net_energy", "Gas and net energy, by month")
                .caption(
                        "Up: heating value of the gas. Down: energy for the backup, bought or own gas, and electricity of the machinery."
                                + " Diamonds: what is left, above the zero line a gain, below it a loss.")
                .stack("gas made", Look.GAS, months(month -> month.of(GasPart.GAS_ENERGY)))
                .stack("energy for the backup", Look.BACKUP, months(month -> -month.of(BackupPart.BOUGHT)))
                .stack("electricity", Look.ELECTRICITY, months(month -> -month.of(Meter.ELECTRICITY)))
                .line("net energy", Look.NEED, months(month -> month.of(KeyFigures.NET)));
    }

    private BarChart byMonth(String name, String title) {
        return BarChart.byMonth(
                name,
                title,
                "kWh a month",
                run.months().stream()
                        .map(month -> YearMonth.parse(month.label()))
                        .toList());
    }

    private double[] months(ToDoubleFunction<Period> kWh) {
        return run.months().stream().mapToDouble(kWh).toArray();
    }
}
