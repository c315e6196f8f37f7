package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.SimpleDateFormat;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.Axis;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
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

    private static final BasicStroke HAIR = new BasicStroke(1);
    private static final BasicStroke HAIR_DASHED =
            new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {2, 3}, 0);
    private static final TimeZone STANDARD_TIME = TimeZone.getTimeZone("UTC");

    private Charts() {}

    /** The chart of a plot, laid out for a form. */
    static Drawing.Sheet sheet(String title, Plot plot, Form form, int heightPx) {
        JFreeChart chart = dressed(title, plot, form);
        return new Drawing.Sheet(
                heightPx, g2 -> chart.draw(g2, new Rectangle2D.Double(0, 0, form.widthPx(), heightPx)));
    }

    private static JFreeChart dressed(String title, Plot plot, Form form) {
        boolean wide = form == Form.WIDE;
        plot.setBackgroundPaint(Color.WHITE);
        plot.setOutlineVisible(false);
        JFreeChart chart = new JFreeChart(null, form.title(), plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.setPadding(wide ? new RectangleInsets(10, 10, 8, 18) : new RectangleInsets(4, 2, 4, 8));
        chart.setTitle(heading(title, form));
        chart.addLegend(legend(plot, form));
        return chart;
    }

    private static TextTitle heading(String title, Form form) {
        TextTitle heading = new TextTitle(title, form.title());
        heading.setPaint(Look.INK);
        heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
        heading.setTextAlignment(HorizontalAlignment.LEFT);
        heading.setPadding(0, 4, form == Form.WIDE ? 10 : 6, 0);
        return heading;
    }

    private static LegendTitle legend(Plot plot, Form form) {
        LegendTitle legend = new LegendTitle(plot);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setItemFont(form.text());
        legend.setItemPaint(Look.INK);
        legend.setItemLabelPadding(new RectangleInsets(2, 4, 2, form == Form.WIDE ? 14 : 6));
        legend.setPadding(6, 0, 0, 0);
        return legend;
    }

    /** An axis of values that reaches down to zero. */
    static NumberAxis amounts(String label, Form form) {
        NumberAxis axis = new NumberAxis(label);
        axis.setNumberFormatOverride(new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        return dressed(axis, form);
    }

    /** An axis around the values shown, at least so long. */
    static NumberAxis around(String label, double least, Form form) {
        NumberAxis axis = amounts(label, form);
        axis.setAutoRangeIncludesZero(false);
        axis.setAutoRangeMinimumSize(least);
        return axis;
    }

    /** Time along the foot of a chart, in the weather file's standard time, no daylight saving; days since the epoch. */
    static DateAxis time(double fromMillis, double toMillis, Form form) {
        DateAxis axis = new DateAxis(null, STANDARD_TIME, Locale.ENGLISH);
        axis.setRange(fromMillis, toMillis);
        axis.setTickUnit(tickUnit((toMillis - fromMillis) / 86.4e6, form));
        return dressed(axis, form);
    }

    /** A tick every so many days, months or years, so that no more than some stand side by side. */
    private static DateTickUnit tickUnit(double days, Form form) {
        int most = form == Form.WIDE ? 13 : 7;
        for (int step : new int[] {1, 2, 3, 7, 14}) {
            if (days <= step * (most - 2)) {
                return new DateTickUnit(DateTickUnitType.DAY, step, dates("d MMM"));
            }
        }
        for (int step : new int[] {1, 2, 4, 6, 12}) {
            if (days <= 30.5 * step * most) {
                return new DateTickUnit(DateTickUnitType.MONTH, step, dates(days <= 400 ? "MMM" : "MMM yy"));
            }
        }
        return new DateTickUnit(DateTickUnitType.YEAR, (int) Math.ceil(days / 365 / most), dates("yyyy"));
    }

    private static SimpleDateFormat dates(String pattern) {
        SimpleDateFormat format = new SimpleDateFormat(pattern, Locale.ENGLISH);
        format.setTimeZone(STANDARD_TIME);
        return format;
    }

    static <A extends Axis> A dressed(A axis, Form form) {
        axis.setLabelFont(form.text());
        axis.setLabelPaint(Look.INK);
        axis.setTickLabelFont(form.text());
        axis.setTickLabelPaint(Look.INK);
        axis.setAxisLinePaint(Look.INK);
        axis.setTickMarkPaint(Look.INK);
        if (form == Form.NARROW) {
            axis.setLabelInsets(new RectangleInsets(1, 1, 1, 1));
        }
        return axis;
    }

    static XYPlot plot(ValueAxis across, ValueAxis up) {
        XYPlot plot = new XYPlot(null, across, up, null);
        plot.setRangeGridlinePaint(Look.GRID);
        plot.setRangeGridlineStroke(HAIR);
        plot.setDomainGridlinePaint(Look.GRID);
        plot.setDomainGridlineStroke(HAIR_DASHED);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setOutlineVisible(false);
        return plot;
    }

    static Shape dot(Form form) {
        double radius = form == Form.WIDE ? 4 : 2.8;
        return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
    }

    static void dress(CategoryPlot plot) {
        plot.setRangeGridlinePaint(Look.GRID);
        plot.setRangeGridlineStroke(HAIR);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    }

    /** Draws series as lines, each as one path, which keeps the SVG small. */
    static XYLineAndShapeRenderer lines(Form form, Look... looks) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setDrawOutlines(false);
        for (int series = 0; series < looks.length; series++) {
            renderer.setSeriesPaint(series, looks[series].line());
            renderer.setSeriesStroke(series, looks[series].stroke(form));
            renderer.setSeriesShape(series, dot(form));
        }
        return renderer;
    }
}
