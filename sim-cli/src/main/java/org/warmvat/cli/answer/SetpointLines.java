package org.warmvat.cli.answer;

import java.time.LocalDateTime;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.design.Design;
import org.warmvat.design.season.SeasonTable;

/** Set-point and minimum in force along a picture: level lines, or as the calendar moves them. */
public final class SetpointLines {

    private SetpointLines() {}

    /** Draws the set-point over so many hours from the left end of the chart. */
    public static LineChart setpoint(LineChart chart, Design design, LocalDateTime start, int hours) {
        SeasonTable season = design.season();
        return inForce(
                chart,
                "set-point",
                Look.SETPOINT,
                start,
                hours,
                day -> season.on(day).setpointC());
    }

    /** Draws the minimum; on days without one there is no line. */
    public static LineChart minimum(LineChart chart, Design design, LocalDateTime start, int hours) {
        SeasonTable season = design.season();
        return inForce(chart, "minimum", Look.MINIMUM, start, hours, day -> {
            double minimumC = season.on(day).minimumC();
            return Double.isInfinite(minimumC) ? Double.NaN : minimumC;
        });
    }

    private static LineChart inForce(
            LineChart chart, String label, Look look, LocalDateTime start, int hours, IntToDoubleFunction ofDay) {
        double[] values = IntStream.range(0, hours)
                .mapToDouble(hour -> ofDay.applyAsDouble(
                        SeasonTable.dayOf(start.plusHours(hour).toLocalDate())))
                .toArray();
        boolean none = IntStream.range(0, hours).allMatch(hour -> Double.isNaN(values[hour]));
        boolean level = IntStream.range(0, hours).allMatch(hour -> values[hour] == values[0]);
        return none
                ? chart
                : level ? chart.level(label, look, values[0]) : chart.line(label, look, Points.means(values, 1));
    }
}
