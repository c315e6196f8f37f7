package org.warmvat.cli.answer.compare;

import java.time.LocalDateTime;
import java.time.Month;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.account.Period;
import org.warmvat.cli.plot.BarChart;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.question.compare.CompareResult.Column;
import org.warmvat.tank.KeyFigures;

/** Designs laid over each other. */
final class ComparePictures {

    /** More lines than this cannot be told apart. */
    private static final int MOST_LINES = 8;

    private static final int DAY_H = 24;

    private final List<Column> columns;
    private final List<String> names;

    private ComparePictures(List<Column> columns, List<String> names) {
        this.columns = columns;
        this.names = names;
    }

    /** The pictures of the first columns, as many as can be told apart. */
    static List<Drawing> of(List<Column> columns, List<String> names) {
        int shown = Math.min(MOST_LINES, columns.size());
        return new ComparePictures(columns.subList(0, shown), names).all();
    }

    private List<Drawing> all() {
        List<Drawing> all = new ArrayList<>(List.of(temperature()));
        List<Month> months = months();
        if (!months.isEmpty()) {
            all.add(byMonth(
                    "heat_bought",
                    "Energy bought for the backup heater, by month",
                    "What the heater draws; the lower the line, the less is bought.",
                    months,
                    month -> month.of(BackupPart.BOUGHT)));
            if (columns.stream().anyMatch(column -> column.drawn().solar().isPresent())) {
                all.add(byMonth(
                        "heat_of_the_sun",
                        "Heat from the sun, by month",
                        "What the solar coil gives to the slurry.",
                        months,
                        month -> month.of(SolarPart.HEAT)));
            }
            if (columns.stream().allMatch(column -> column.drawn().gas().isPresent())) {
                all.add(byMonth(
                        "net_energy",
                        "Net energy, by month",
                        "Gas energy less what is bought: above the zero line a gain, below it a loss.",
                        months,
                        month -> month.of(KeyFigures.NET)));
            }
        }
        return all;
    }

    private Drawing temperature() {
        LocalDateTime start = columns.get(0).weather().start();
        int hours = columns.stream()
                .mapToInt(column -> column.weather().hours())
                .max()
                .orElseThrow();
        boolean together = columns.stream()
                .allMatch(column -> MonthDay.from(column.weather().start()).equals(MonthDay.from(start)));
        LineChart chart = together
                ? LineChart.overTime(
                        "slurry", "Slurry temperature, laid over each other", start, start.plusHours(hours))
                : LineChart.over(
                        "slurry",
                        "Slurry temperature, laid over each other",
                        "days since each file's beginning",
                        0,
                        hours / (double) DAY_H);
        chart.caption("Mean of each day. Lines that run above each other all year keep warmer all year."
                        + (columns.size() < names.size() ? " The first " + columns.size() + " of them." : ""))
                .strip("°C", 2);
        for (int i = 0; i < columns.size(); i++) {
            chart.line(names.get(i), Look.nth(i), days(columns.get(i), together ? DAY_H : 1));
        }
        return chart;
    }

    private static Points days(Column column, double unit) {
        List<Period> days = column.days();
        return new Points(
                IntStream.range(0, days.size())
                        .mapToDouble(day -> (day + 0.5) * unit)
                        .toArray(),
                days.stream().mapToDouble(day -> day.of(KeyFigures.MEAN_C)).toArray());
    }

    /** Months of the calendar of which every column has one. */
    private List<Month> months() {
        return Arrays.stream(Month.values())
                .filter(month -> columns.stream()
                        .allMatch(column -> column.months().stream().anyMatch(period -> in(month, period))))
                .toList();
    }

    private static boolean in(Month month, Period period) {
        return YearMonth.parse(period.label()).getMonth() == month;
    }

    /** A line for each column; a month that comes more than once is told by its mean. */
    private Drawing byMonth(
            String name, String title, String caption, List<Month> months, ToDoubleFunction<Period> kWh) {
        BarChart chart = BarChart.of(
                        name,
                        title,
                        "kWh a month",
                        months.stream()
                                .map(month -> month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
                                .toList())
                .caption(caption);
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            chart.line(
                    names.get(i),
                    Look.nth(i),
                    months.stream()
                            .mapToDouble(month -> column.months().stream()
                                    .filter(period -> in(month, period))
                                    .mapToDouble(kWh)
                                    .average()
                                    .orElseThrow())
                            .toArray());
        }
        return chart;
    }
}
