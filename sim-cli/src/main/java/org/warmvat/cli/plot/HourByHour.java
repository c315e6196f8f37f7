package org.warmvat.cli.plot;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;
import org.warmvat.result.Hourly;
import org.warmvat.result.Marks;
import org.warmvat.result.RunResult;

/** A week hour by hour, in three strips over one time axis, so that pump, thermostat and feed are seen acting. */
final class HourByHour {

    private static final LineStyle SLURRY = new LineStyle(Palette.SLURRY, Palette.solid(2.2f));
    private static final LineStyle SETPOINT = new LineStyle(Palette.INK, Palette.dashed(1.4f, 9, 5));
    private static final LineStyle COLLECTOR = new LineStyle(Palette.SUN, Palette.solid(2f));
    private static final LineStyle BACKUP_WATER = new LineStyle(Palette.BACKUP, Palette.dashed(1.8f, 7, 3));
    private static final LineStyle AIR = new LineStyle(Palette.FEED, Palette.dashed(1.6f, 2, 3));
    private static final LineStyle SOLAR_HEAT = new LineStyle(Palette.SUN, Palette.solid(2.6f));
    private static final LineStyle BACKUP_HEAT = new LineStyle(Palette.BACKUP, Palette.dashed(1.8f, 7, 3));
    private static final LineStyle FEED_HEAT = new LineStyle(Palette.FEED, Palette.dashed(1.8f, 2, 3));

    private final Hourly hourly;
    private final Marks marks;
    private final ChosenWeek week;
    private final Legend legend = new Legend();

    private HourByHour(RunResult run, ChosenWeek week) {
        this.hourly = run.hourly();
        this.marks = run.marks();
        this.week = week;
    }

    static Drawing of(RunResult run, ChosenWeek week) {
        String caption = "Top: the slurry against its set-point. Middle: collector, backup water and outdoor air."
                + " Bottom: heat given by the two coils, and heat the feed took, as means of each hour; a coil that gives"
                + " nothing has its pump standing still.";
        String title = week.title();
        return new Drawing(week.name(), title, caption, new HourByHour(run, week).chart(title), 720);
    }

    private JFreeChart chart(String title) {
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(days());
        plot.setGap(14);
        plot.add(slurry(), 3);
        plot.add(circuits(), 3);
        plot.add(heat(), 3);
        plot.setFixedLegendItems(legend.items());
        return Charts.dressed(title, plot);
    }

    private DateAxis days() {
        LocalDateTime from = hourly.firstHourStart().plusHours(week.firstHour());
        return Charts.time(from, from.plusHours(week.hours()));
    }

    private XYPlot slurry() {
        double[] setpoint = hourly.slurryC().clone();
        Arrays.fill(setpoint, marks.setpointC());
        return new Strip(Charts.temperatures("slurry, °C", 1.5))
                .add("slurry", ends(hourly.slurryC()), SLURRY)
                .add("set-point", ends(setpoint), SETPOINT)
                .plot();
    }

    private XYPlot circuits() {
        Strip strip = new Strip(Charts.temperatures("circuits, °C", 5));
        hourly.collectorC().ifPresent(values -> strip.add("collector", ends(values), COLLECTOR));
        hourly.backupCircuitC().ifPresent(values -> strip.add("backup water", ends(values), BACKUP_WATER));
        return strip.add("outdoor air", ends(hourly.airC()), AIR).plot();
    }

    private XYPlot heat() {
        NumberAxis axis = Charts.amounts("heat, W");
        axis.setAutoRangeMinimumSize(50);
        Strip strip = new Strip(axis);
        hourly.solarHeatW().ifPresent(values -> strip.add("heat from the sun", means(values), SOLAR_HEAT));
        hourly.backupHeatW().ifPresent(values -> strip.add("heat from the backup", means(values), BACKUP_HEAT));
        return strip.add("heat taken by the feed", means(hourly.feedW()), FEED_HEAT)
                .plot();
    }

    /** Values at the ends of the hours. */
    private double[][] ends(double[] values) {
        double[][] points = new double[2][week.hours()];
        for (int hour = 0; hour < week.hours(); hour++) {
            points[0][hour] = millis(hour + 1);
            points[1][hour] = values[week.firstHour() + hour];
        }
        return points;
    }

    /** Means over the hours, as steps. */
    private double[][] means(double[] values) {
        double[][] points = new double[2][2 * week.hours()];
        for (int hour = 0; hour < week.hours(); hour++) {
            points[0][2 * hour] = millis(hour);
            points[0][2 * hour + 1] = millis(hour + 1);
            points[1][2 * hour] = values[week.firstHour() + hour];
            points[1][2 * hour + 1] = values[week.firstHour() + hour];
        }
        return points;
    }

    private double millis(int hour) {
        return Charts.millis(hourly.firstHourStart().plusHours((long) week.firstHour() + hour));
    }

    /** One of the strips, with its lines entered in the common legend. */
    private final class Strip {
        private final NumberAxis axis;
        private final DefaultXYDataset lines = new DefaultXYDataset();
        private final List<LineStyle> styles = new ArrayList<>();

        Strip(NumberAxis axis) {
            this.axis = axis;
        }

        Strip add(String name, double[][] points, LineStyle style) {
            lines.addSeries(name, points);
            styles.add(style);
            legend.line(name, style);
            return this;
        }

        XYPlot plot() {
            XYPlot plot = Charts.plot(null, axis);
            plot.setDataset(lines);
            plot.setRenderer(Charts.lines(styles.toArray(LineStyle[]::new)));
            return plot;
        }
    }
}
