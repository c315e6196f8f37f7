package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.warmvat.account.Hourly;
import org.warmvat.cli.answer.SetpointLines;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.question.year.YearResult;

/** Pictures of single weeks, hour by hour: the worst, and one of each season. */
record WeekPictures(YearResult run, Hourly hourly) {

    private static final int WEEK_H = 168;
    private static final int DAY_H = 24;
    private static final int DAY_OF_MONTH = 12;

    List<Drawing> all() {
        List<Drawing> all = new ArrayList<>();
        WorstWeek.of(run)
                .ifPresent(worst -> all.add(week(
                        "worst_week",
                        "The worst week, hour by hour: " + worst.mark().words(),
                        firstHour(worst))));
        all.addAll(seasons());
        return all;
    }

    /**
     * A week of deep winter, of spring and of summer, from the 12th of January, April and July, in the south half a year later. A run that
     * lacks one of them shows its first and its middle week instead.
     */
    private List<Drawing> seasons() {
        boolean south = run.site().latitudeDeg() < 0;
        Optional<Integer> winter = find(south ? Month.JULY : Month.JANUARY);
        Optional<Integer> spring = find(south ? Month.OCTOBER : Month.APRIL);
        Optional<Integer> summer = find(south ? Month.JANUARY : Month.JULY);
        if (winter.isEmpty() || spring.isEmpty() || summer.isEmpty()) {
            return firstAndMiddle();
        }
        return List.of(
                week("winter_week", "A week of winter, hour by hour", winter.get()),
                week("spring_week", "A week of spring, hour by hour", spring.get()),
                week("summer_week", "A week of summer, hour by hour", summer.get()));
    }

    private List<Drawing> firstAndMiddle() {
        List<Drawing> weeks = new ArrayList<>(List.of(week("first_week", "The first week, hour by hour", 0)));
        if (hourly.hours() >= 2 * WEEK_H) {
            int middle = (hourly.hours() - WEEK_H) / 2 / DAY_H * DAY_H;
            weeks.add(week("middle_week", "A week in the middle, hour by hour", middle));
        }
        return weeks;
    }

    private Optional<Integer> find(Month month) {
        for (int year = 0; year <= 1; year++) {
            LocalDate day = LocalDate.of(hourly.start().getYear() + year, month, DAY_OF_MONTH);
            long hour = ChronoUnit.HOURS.between(hourly.start(), day.atStartOfDay());
            if (hour >= 0 && hour + WEEK_H <= hourly.hours()) {
                return Optional.of((int) hour);
            }
        }
        return Optional.empty();
    }

    private int firstHour(WorstWeek worst) {
        long hour = ChronoUnit.HOURS.between(hourly.start(), worst.firstDay().atStartOfDay());
        return (int) Math.max(0, Math.min(hourly.hours() - WEEK_H, hour));
    }

    /** A week in three strips, so that pump, thermostat and feed are seen acting. */
    private Drawing week(String name, String title, int first) {
        int hours = Math.min(WEEK_H, hourly.hours());
        LineChart chart = LineChart.overTime(
                        name,
                        title,
                        hourly.start().plusHours(first),
                        hourly.start().plusHours((long) first + hours))
                .caption(
                        "Top: the slurry against its set-point. Middle: collector, backup water and outdoor air. Bottom: heat"
                                + " given by the two coils, and heat the feed took, as means of each hour; a coil that gives nothing"
                                + " has its pump standing still.")
                .strip("slurry, °C", 1.5)
                .line("slurry", Look.SLURRY, ends(hourly.orZero("slurry_c"), first));
        SetpointLines.setpoint(chart, run.design(), hourly.start().plusHours(first), hours)
                .strip("circuits, °C", 5);
        hourly.column("collector_c").ifPresent(values -> chart.line("collector", Look.SUN, ends(values, first)));
        hourly.column("backup_circuit_c")
                .ifPresent(values -> chart.line("backup water", Look.BACKUP, ends(values, first)));
        chart.line("outdoor air", Look.AIR, ends(hourly.orZero("air_c"), first)).stripWithZero("heat, W", 50);
        hourly.column("solar_heat_w")
                .ifPresent(values -> chart.line("heat from the sun", Look.SUN, means(values, first)));
        hourly.column("backup_heat_w")
                .ifPresent(values -> chart.line("heat from the backup", Look.BACKUP, means(values, first)));
        return chart.line("heat taken by the feed", Look.FEED, means(hourly.orZero("feed_w"), first));
    }

    private static Points ends(double[] values, int first) {
        return Points.ends(week(values, first));
    }

    private static Points means(double[] values, int first) {
        return Points.means(week(values, first), 1);
    }

    private static double[] week(double[] values, int first) {
        return Arrays.copyOfRange(values, first, Math.min(values.length, first + WEEK_H));
    }
}
