package org.warmvat.cli.plot;

import java.time.LocalDateTime;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.DefaultIntervalXYDataset;
import org.jfree.data.xy.DefaultXYDataset;
import org.warmvat.result.Hourly;
import org.warmvat.result.Marks;
import org.warmvat.result.RunResult;

/** Slurry temperature over the run: mean, and band from lowest to highest, against set-point and floor. */
final class TankTemperature {

    private static final String TITLE = "Tank temperature";
    private static final int FINEST_BINS = 1100;
    private static final LineStyle MEAN = new LineStyle(Palette.SLURRY, Palette.solid(1.8f));
    private static final LineStyle SETPOINT = new LineStyle(Palette.INK, Palette.dashed(1.6f, 9, 5));
    private static final LineStyle FLOOR = new LineStyle(Palette.BACKUP, Palette.dashed(2f, 2, 4));

    private TankTemperature() {}

    static Drawing of(RunResult run) {
        Hourly hourly = run.hourly();
        int binHours = binHours(hourly.hours());
        LocalDateTime from = hourly.firstHourStart();
        LocalDateTime to = hourly.end(hourly.hours() - 1);
        DateAxis time = Charts.time(from, to);
        NumberAxis values = Charts.temperatures("°C", 2);
        XYPlot plot = Charts.plot(time, values);
        plot.setRenderer(0, Charts.lines(SETPOINT, FLOOR));
        plot.setDataset(0, marks(run.marks(), from, to));
        plot.setRenderer(1, bandRenderer());
        plot.setDataset(1, band(hourly, binHours));
        String bin = binHours == 1 ? "hour" : binHours == 24 ? "day" : "week";
        plot.setFixedLegendItems(new Legend()
                .line("slurry, mean of each " + bin, MEAN)
                .area("lowest to highest of the " + bin, new Swatch(Palette.BAND, Hatch.NONE))
                .line("set-point", SETPOINT)
                .line("floor", FLOOR)
                .items());
        String caption = "The slurry should stay above the dotted floor; below it the tank is short of heat."
                + " Above the set-point only the sun and warm weather push it.";
        return new Drawing("tank_temperature", TITLE, caption, Charts.dressed(TITLE, plot), 420);
    }

    private static int binHours(int hours) {
        if (hours <= FINEST_BINS) {
            return 1;
        }
        return hours <= FINEST_BINS * 24 ? 24 : 168;
    }

    private static DeviationRenderer bandRenderer() {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1);
        renderer.setSeriesPaint(0, MEAN.colour());
        renderer.setSeriesStroke(0, MEAN.stroke());
        renderer.setSeriesFillPaint(0, Palette.BAND);
        return renderer;
    }

    private static DefaultXYDataset marks(Marks marks, LocalDateTime from, LocalDateTime to) {
        DefaultXYDataset lines = new DefaultXYDataset();
        double[] ends = {Charts.millis(from), Charts.millis(to)};
        lines.addSeries("set-point", new double[][] {ends, {marks.setpointC(), marks.setpointC()}});
        lines.addSeries("floor", new double[][] {ends, {marks.floorC(), marks.floorC()}});
        return lines;
    }

    private static DefaultIntervalXYDataset band(Hourly hourly, int binHours) {
        int bins = (hourly.hours() + binHours - 1) / binHours;
        double[][] columns = new double[6][bins];
        for (int bin = 0; bin < bins; bin++) {
            int first = bin * binHours;
            int end = Math.min(first + binHours, hourly.hours());
            double x = Charts.millis(hourly.firstHourStart()) + (first + end) / 2.0 * 3.6e6;
            columns[0][bin] = x;
            columns[1][bin] = x;
            columns[2][bin] = x;
            fill(columns, bin, hourly.slurryC(), first, end);
        }
        DefaultIntervalXYDataset dataset = new DefaultIntervalXYDataset();
        dataset.addSeries("slurry", columns);
        return dataset;
    }

    private static void fill(double[][] columns, int bin, double[] slurryC, int first, int end) {
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int hour = first; hour < end; hour++) {
            sum += slurryC[hour];
            least = Math.min(least, slurryC[hour]);
            most = Math.max(most, slurryC[hour]);
        }
        columns[3][bin] = sum / (end - first);
        columns[4][bin] = least;
        columns[5][bin] = most;
    }
}
