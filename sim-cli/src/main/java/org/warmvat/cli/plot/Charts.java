package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.SimpleDateFormat;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** The common dress of all charts: white ground, one ink, title at the left, legend below. */
final class Charts {

    private static final TimeZone STANDARD_TIME = TimeZone.getTimeZone(ZoneOffset.UTC);

    private Charts() {}

    static JFreeChart dressed(String title, Plot plot) {
        plot.setBackgroundPaint(Color.WHITE);
        plot.setOutlineVisible(false);
        JFreeChart chart = new JFreeChart(null, Palette.TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.setPadding(new RectangleInsets(10, 10, 8, 18));
        TextTitle heading = new TextTitle(title, Palette.TITLE);
        heading.setPaint(Palette.INK);
        heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
        heading.setPadding(0, 4, 10, 0);
        chart.setTitle(heading);
        LegendTitle legend = new LegendTitle(plot);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setItemFont(Palette.TICK);
        legend.setItemPaint(Palette.INK);
        legend.setItemLabelPadding(new RectangleInsets(2, 4, 2, 14));
        legend.setPadding(6, 0, 0, 0);
        chart.addLegend(legend);
        return chart;
    }

    /** An axis of values that reaches down to zero. */
    static NumberAxis amounts(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setNumberFormatOverride(new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        return dressed(axis);
    }

    /** An axis of temperatures around those shown, at least some kelvins long. */
    static NumberAxis temperatures(String label, double leastK) {
        NumberAxis axis = amounts(label);
        axis.setAutoRangeIncludesZero(false);
        axis.setAutoRangeMinimumSize(leastK);
        return axis;
    }

    /** Time along the foot of a chart, in the weather file's standard time, no daylight saving. */
    static DateAxis time(LocalDateTime from, LocalDateTime to) {
        DateAxis axis = new DateAxis(null, STANDARD_TIME, Locale.ENGLISH);
        axis.setRange(millis(from), millis(to));
        axis.setTickUnit(tickUnit(Duration.between(from, to).toDays()));
        return dressed(axis);
    }

    /** A tick every day, week, month or year, so that about a dozen stand side by side. */
    private static DateTickUnit tickUnit(long days) {
        if (days <= 10) {
            return new DateTickUnit(DateTickUnitType.DAY, 1, dates("d MMM"));
        }
        if (days <= 100) {
            return new DateTickUnit(DateTickUnitType.DAY, days <= 30 ? 3 : 10, dates("d MMM"));
        }
        return days <= 400
                ? new DateTickUnit(DateTickUnitType.MONTH, 1, dates("MMM"))
                : new DateTickUnit(DateTickUnitType.MONTH, days <= 1500 ? 4 : 12, dates("MMM yyyy"));
    }

    private static SimpleDateFormat dates(String pattern) {
        SimpleDateFormat format = new SimpleDateFormat(pattern, Locale.ENGLISH);
        format.setTimeZone(STANDARD_TIME);
        return format;
    }

    static double millis(LocalDateTime time) {
        return time.toEpochSecond(ZoneOffset.UTC) * 1000.0;
    }

    static <A extends Axis> A dressed(A axis) {
        axis.setLabelFont(Palette.LABEL);
        axis.setLabelPaint(Palette.INK);
        axis.setTickLabelFont(Palette.TICK);
        axis.setTickLabelPaint(Palette.INK);
        axis.setAxisLinePaint(Palette.INK);
        axis.setTickMarkPaint(Palette.INK);
        return axis;
    }

    static XYPlot plot(DateAxis time, NumberAxis values) {
        XYPlot plot = new XYPlot(null, time, values, null);
        plot.setRangeGridlinePaint(Palette.GRID);
        plot.setRangeGridlineStroke(new BasicStroke(1));
        plot.setDomainGridlinePaint(Palette.GRID);
        plot.setDomainGridlineStroke(Palette.dashed(1, 2, 3));
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(Color.WHITE);
        return plot;
    }

    static void dress(CategoryPlot plot) {
        plot.setRangeGridlinePaint(Palette.GRID);
        plot.setRangeGridlineStroke(new BasicStroke(1));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    /** Draws series as lines, each as one path, which keeps the SVG small. */
    static XYLineAndShapeRenderer lines(LineStyle... styles) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int series = 0; series < styles.length; series++) {
            renderer.setSeriesPaint(series, styles[series].colour());
            renderer.setSeriesStroke(series, styles[series].stroke());
        }
        return renderer;
    }
}
