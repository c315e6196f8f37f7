package org.warmvat.cli.plot;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/** Lines in one or several strips over one axis: time, or a quantity. */
public final class StripChart {

    private static final int STRIP_PX = 240;
    private static final int REST_PX = 150;

    private final String name;
    private final String title;
    private final String caption;
    private final ValueAxis along;
    private final Legend legend = new Legend();
    private final List<Strip> strips = new ArrayList<>();

    /** What a line shows, and so how it is drawn: apart in grey as well as in colour. */
    public enum Line {
        /** The slurry in the first case. */
        SLURRY,
        /** The slurry in the other case. */
        OTHER_SLURRY,
        /** The set-point. */
        SETPOINT,
        /** The floor. */
        FLOOR,
        /** Outdoor air. */
        AIR,
        /** Heat from the sun. */
        SUN,
        /** Heat from the backup, and what is bought. */
        BACKUP,
        /** Heat needed. */
        NEED,
        /** A value marked across. */
        MARK;

        private LineStyle style() {
            return switch (this) {
                case SLURRY -> new LineStyle(Palette.SLURRY, Palette.solid(2.2f));
                case OTHER_SLURRY -> new LineStyle(Palette.BACKUP, Palette.dashed(2f, 8, 4));
                case SETPOINT -> new LineStyle(Palette.INK, Palette.dashed(1.4f, 9, 5));
                case FLOOR -> new LineStyle(Palette.BACKUP, Palette.dashed(2f, 2, 4));
                case AIR -> new LineStyle(Palette.FEED, Palette.dashed(1.6f, 2, 3));
                case SUN -> new LineStyle(Palette.SUN, Palette.solid(2.6f));
                case BACKUP -> new LineStyle(Palette.BACKUP, Palette.dashed(1.8f, 7, 3));
                case NEED -> new LineStyle(Palette.INK, Palette.solid(1.6f));
                case MARK -> new LineStyle(Palette.INK, Palette.dashed(1.4f, 2, 3));
            };
        }
    }

    private static final class Strip {
        private final NumberAxis axis;
        private final DefaultXYDataset lines = new DefaultXYDataset();
        private final List<LineStyle> styles = new ArrayList<>();

        Strip(NumberAxis axis) {
            this.axis = axis;
        }

        XYPlot plot() {
            XYPlot plot = Charts.plot(null, axis);
            plot.setDataset(lines);
            plot.setRenderer(Charts.lines(styles.toArray(LineStyle[]::new)));
            return plot;
        }
    }

    private StripChart(String name, String title, String caption, ValueAxis along) {
        this.name = name;
        this.title = title;
        this.caption = caption;
        this.along = along;
    }

    /**
     * A chart over time.
     *
     * @param name file name without ending
     * @param title title
     * @param caption how to read it
     * @param from left end
     * @param to right end
     */
    public static StripChart overTime(String name, String title, String caption, LocalDateTime from, LocalDateTime to) {
        return new StripChart(name, title, caption, Charts.time(from, to));
    }

    /**
     * A chart over a quantity from nothing up.
     *
     * @param name file name without ending
     * @param title title
     * @param caption how to read it
     * @param label the quantity and its unit
     * @param to right end
     */
    public static StripChart over(String name, String title, String caption, String label, double to) {
        NumberAxis axis = Charts.amounts(label);
        axis.setRange(0, to);
        return new StripChart(name, title, caption, axis);
    }

    /** A further strip, of temperatures, at least some kelvins high. */
    public StripChart temperatures(String label, double leastK) {
        strips.add(new Strip(Charts.temperatures(label, leastK)));
        return this;
    }

    /** A further strip, of amounts above nothing, at least some units high. */
    public StripChart amounts(String label, double least) {
        NumberAxis axis = Charts.amounts(label);
        axis.setAutoRangeMinimumSize(least);
        strips.add(new Strip(axis));
        return this;
    }

    /**
     * Adds a line to the last strip.
     *
     * @param label its name in the legend
     * @param points its points along and up
     * @param line what it shows
     */
    public StripChart line(String label, double[][] points, Line line) {
        Strip strip = strips.get(strips.size() - 1);
        strip.lines.addSeries(label, points);
        strip.styles.add(line.style());
        legend.line(label, line.style());
        return this;
    }

    /** Adds a level line to the last strip. */
    public StripChart level(String label, double value, Line line) {
        double[][] points = {
            {along.getLowerBound(), along.getUpperBound()},
            {value, value}
        };
        return line(label, points, line);
    }

    /** Points of hourly values at the ends of their hours, along time. */
    public static double[][] ends(LocalDateTime start, double[] values) {
        double[][] points = new double[2][values.length];
        for (int hour = 0; hour < values.length; hour++) {
            points[0][hour] = Charts.millis(start.plusHours(hour + 1L));
            points[1][hour] = values[hour];
        }
        return points;
    }

    /** Points of hourly values at the ends of their hours, along the count of hours; the first at 0. */
    public static double[][] afterHours(double first, double[] values) {
        double[][] points = new double[2][values.length + 1];
        points[1][0] = first;
        for (int hour = 0; hour < values.length; hour++) {
            points[0][hour + 1] = hour + 1.0;
            points[1][hour + 1] = values[hour];
        }
        return points;
    }

    /** Points of hourly means as steps, each the mean of some hours, along time. */
    public static double[][] steps(LocalDateTime start, double[] values, int hoursEach) {
        int steps = (values.length + hoursEach - 1) / hoursEach;
        double[][] points = new double[2][2 * steps];
        for (int step = 0; step < steps; step++) {
            int from = step * hoursEach;
            int to = Math.min(values.length, from + hoursEach);
            double sum = 0;
            for (int hour = from; hour < to; hour++) {
                sum += values[hour];
            }
            points[0][2 * step] = Charts.millis(start.plusHours(from));
            points[0][2 * step + 1] = Charts.millis(start.plusHours(to));
            points[1][2 * step] = sum / (to - from);
            points[1][2 * step + 1] = sum / (to - from);
        }
        return points;
    }

    /** Draws it. */
    public Picture picture() {
        System.setProperty("java.awt.headless", "true");
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(along);
        plot.setGap(14);
        strips.forEach(strip -> plot.add(strip.plot(), 1));
        plot.setFixedLegendItems(legend.items());
        int height = REST_PX + STRIP_PX * strips.size();
        return Rendering.of(new Drawing(name, title, caption, Charts.dressed(title, plot), height));
    }
}
