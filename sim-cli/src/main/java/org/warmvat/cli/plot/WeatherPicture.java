package org.warmvat.cli.plot;

import java.awt.Color;
import java.time.LocalDateTime;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.DefaultIntervalXYDataset;
import org.jfree.data.xy.DefaultXYDataset;
import org.warmvat.weather.Weather;

/** Air temperature and sun through a weather file, day by day. */
public final class WeatherPicture {

    private static final String TITLE = "Weather";
    private static final LineStyle AIR = new LineStyle(Palette.SLURRY, Palette.solid(1.4f));
    private static final LineStyle SUN = new LineStyle(Palette.BACKUP, Palette.solid(1.4f));
    private static final int DAY_H = 24;

    private WeatherPicture() {}

    /** Draws it; fails with whatever drawing fails with on a machine without fonts. */
    public static Picture of(Weather weather) {
        System.setProperty("java.awt.headless", "true");
        LocalDateTime from = weather.start();
        DateAxis time = Charts.time(from, weather.end());
        XYPlot air = Charts.plot(time, Charts.temperatures("air, °C", 2));
        air.setRenderer(bandRenderer());
        air.setDataset(airBand(weather));
        NumberAxis amounts = Charts.amounts("kWh/m2 a day");
        XYPlot sun = Charts.plot(time, amounts);
        sun.setRenderer(Charts.lines(SUN));
        sun.setDataset(sun(weather));
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(time);
        both.add(air, 3);
        both.add(sun, 2);
        both.setGap(14);
        both.setBackgroundPaint(Color.WHITE);
        both.setFixedLegendItems(new Legend()
                .line("air, mean of each day", AIR)
                .area("lowest to highest of the day", new Swatch(Palette.BAND, Hatch.NONE))
                .line("sun on the flat, each day", SUN)
                .items());
        String caption = "Each day's air temperature and irradiation on the horizontal.";
        String title = TITLE + ": " + weather.site().name();
        return Rendering.of(new Drawing("weather", title, caption, Charts.dressed(title, both), 560));
    }

    private static DeviationRenderer bandRenderer() {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1);
        renderer.setSeriesPaint(0, AIR.colour());
        renderer.setSeriesStroke(0, AIR.stroke());
        renderer.setSeriesFillPaint(0, Palette.BAND);
        return renderer;
    }

    private static int days(Weather weather) {
        return Math.max(1, weather.hours() / DAY_H);
    }

    private static double noon(Weather weather, int day) {
        return Charts.millis(weather.start()) + (day + 0.5) * DAY_H * 3.6e6;
    }

    private static DefaultIntervalXYDataset airBand(Weather weather) {
        double[][] columns = new double[6][days(weather)];
        for (int day = 0; day < columns[0].length; day++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            double sum = 0;
            int end = Math.min(weather.hours(), DAY_H * day + DAY_H);
            for (int hour = DAY_H * day; hour < end; hour++) {
                double airC = weather.airC().value(hour);
                least = Math.min(least, airC);
                most = Math.max(most, airC);
                sum += airC;
            }
            columns[0][day] = noon(weather, day);
            columns[1][day] = columns[0][day];
            columns[2][day] = columns[0][day];
            columns[3][day] = sum / (end - DAY_H * day);
            columns[4][day] = least;
            columns[5][day] = most;
        }
        DefaultIntervalXYDataset dataset = new DefaultIntervalXYDataset();
        dataset.addSeries("air", columns);
        return dataset;
    }

    private static DefaultXYDataset sun(Weather weather) {
        double[][] points = new double[2][days(weather)];
        for (int day = 0; day < points[0].length; day++) {
            points[0][day] = noon(weather, day);
            for (int hour = DAY_H * day; hour < Math.min(weather.hours(), DAY_H * day + DAY_H); hour++) {
                points[1][day] += weather.globalWPerM2(hour) / 1000;
            }
        }
        DefaultXYDataset dataset = new DefaultXYDataset();
        dataset.addSeries("sun", points);
        return dataset;
    }
}
