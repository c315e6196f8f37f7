package org.warmvat.cli.answer.year;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Locale;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.LineChart;
import org.warmvat.cli.plot.Look;
import org.warmvat.cli.plot.Points;
import org.warmvat.cli.words.Words;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.heating.ShadingLoss;
import org.warmvat.sun.SunPath;
import org.warmvat.weather.Weather;

/** The sun's paths through the year over the horizon, with what the collector loses to it. */
final class SolarChart {

    /** Name of the picture. */
    static final String NAME = "solar_chart";

    private static final int STEP_MINUTES = 10;
    private static final int HALF_CIRCLE_DEG = 180;
    private static final int DAY = 21;
    private static final List<Month> MONTHS =
            List.of(Month.JUNE, Month.MAY, Month.APRIL, Month.MARCH, Month.FEBRUARY, Month.JANUARY, Month.DECEMBER);

    private final Weather weather;
    private final Shading shading;
    private final double middleDeg;

    private SolarChart(Weather weather, Shading shading) {
        this.weather = weather;
        this.shading = shading;
        middleDeg = weather.site().latitudeDeg() >= 0 ? HALF_CIRCLE_DEG : 0;
    }

    /** The chart of a collector's sky. */
    static Drawing of(Weather weather, Shading shading, ShadingLoss loss) {
        return new SolarChart(weather, shading).drawing(loss);
    }

    private Drawing drawing(ShadingLoss loss) {
        LineChart chart = LineChart.over(
                        NAME,
                        "The sun's paths over the horizon",
                        "azimuth, degrees clockwise from north",
                        middleDeg - HALF_CIRCLE_DEG,
                        middleDeg + HALF_CIRCLE_DEG)
                .caption(caption(loss))
                .stripWithZero("elevation, degrees", 60);
        for (int i = 0; i < MONTHS.size(); i++) {
            List<SunPath.Point> path = path(MONTHS.get(i));
            if (!path.isEmpty()) {
                chart.line(label(MONTHS.get(i)), Look.nth(i), points(path));
            }
        }
        chart.line("horizon", Look.NEED, horizon());
        markHours(chart);
        return chart;
    }

    private List<SunPath.Point> path(Month month) {
        LocalDate date = LocalDate.of(weather.start().getYear(), month, DAY);
        return SunPath.on(weather.observer(), date, weather.site().utcOffsetH(), STEP_MINUTES);
    }

    /** Months on either side of the solstice have nearly the same path. */
    private static String label(Month month) {
        int other = 12 - month.getValue();
        String first = DAY + " " + Words.month(month);
        return month == Month.JUNE || month == Month.DECEMBER ? first : first + ", " + Words.month(Month.of(other));
    }

    private Points points(List<SunPath.Point> path) {
        return new Points(
                path.stream().mapToDouble(point -> turned(point.azimuthDeg())).toArray(),
                path.stream().mapToDouble(SunPath.Point::elevationDeg).toArray());
    }

    /** An azimuth within half a circle of the chart's middle. */
    private double turned(double azimuthDeg) {
        return azimuthDeg > middleDeg + HALF_CIRCLE_DEG ? azimuthDeg - 2 * HALF_CIRCLE_DEG : azimuthDeg;
    }

    private Points horizon() {
        int degrees = 2 * HALF_CIRCLE_DEG + 1;
        double[] azimuth = new double[degrees];
        double[] elevation = new double[degrees];
        for (int i = 0; i < degrees; i++) {
            azimuth[i] = middleDeg - HALF_CIRCLE_DEG + i;
            elevation[i] = shading.horizon().elevationDeg(azimuth[i]);
        }
        return new Points(azimuth, elevation);
    }

    private void markHours(LineChart chart) {
        for (SunPath.Point point : path(middleDeg == 0 ? Month.DECEMBER : Month.JUNE)) {
            if (point.hourOfDay() % 3 == 0) {
                chart.mark(
                        String.format(Locale.ROOT, "%.0f h", point.hourOfDay()),
                        turned(point.azimuthDeg()),
                        point.elevationDeg());
            }
        }
    }

    private static String caption(ShadingLoss loss) {
        StringBuilder text = new StringBuilder(
                "Hours are those of the file's clock. Where a path runs below the horizon the sun is hidden. Horizon and trees take"
                        + " of the light on the collector's plane: ");
        for (int month = 1; month <= 12; month++) {
            if (loss.openKWhPerM2()[month - 1] > 0) {
                text.append(Words.month(Month.of(month)))
                        .append(String.format(Locale.ROOT, " %.0f %%, ", 100 * loss.lostShare(month)));
            }
        }
        return text.append(String.format(Locale.ROOT, "all together %.0f %%.", 100 * loss.lostShare()))
                .toString();
    }
}
