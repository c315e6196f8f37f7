package org.warmvat.cli.plot;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** Places in a chart that are marked and named: upright lines, and points. */
final class Pins {

    private record Upright(String label, double x) {}

    private record Point(String label, double x, double y) {}

    private final List<Upright> uprights = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();

    void upright(String label, double x) {
        uprights.add(new Upright(label, x));
    }

    void point(String label, double x, double y) {
        points.add(new Point(label, x, y));
    }

    /**
     * Sets them into a plot whose axis along is set already.
     *
     * @param place from the caller's x to the axis
     * @param middle where labels change to the other side, on the axis
     * @param named whether the upright lines are named here
     */
    void addTo(XYPlot plot, DoubleUnaryOperator place, double middle, boolean named, Form form) {
        for (int row = 0; row < uprights.size(); row++) {
            Upright upright = uprights.get(row);
            ValueMarker marker = new ValueMarker(place.applyAsDouble(upright.x()), Look.INK, Look.MARK.stroke(form));
            if (named) {
                name(marker, upright.label(), row, middle, form);
            }
            plot.addDomainMarker(marker);
        }
        if (!points.isEmpty()) {
            addPoints(plot, place, middle, form);
        }
    }

    private static void name(ValueMarker marker, String label, int row, double middle, Form form) {
        boolean left = marker.getValue() > middle;
        marker.setLabel(label);
        marker.setLabelFont(form.text());
        marker.setLabelPaint(Look.INK);
        marker.setLabelBackgroundColor(Color.WHITE);
        marker.setLabelAnchor(left ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
        marker.setLabelTextAnchor(left ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        marker.setLabelOffset(new RectangleInsets(2 + 1.4 * form.textPx() * row, 3, 2, 3));
    }

    private void addPoints(XYPlot plot, DoubleUnaryOperator place, double middle, Form form) {
        double[][] dots = new double[2][points.size()];
        for (int i = 0; i < points.size(); i++) {
            dots[0][i] = place.applyAsDouble(points.get(i).x());
            dots[1][i] = points.get(i).y();
            plot.addAnnotation(name(points.get(i), dots[0][i], dots[0][i] > middle, form));
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("marked", dots);
        int index = plot.getDatasetCount();
        plot.setDataset(index, data);
        plot.setRenderer(index, PointChart.dots(Look.NEED, form, Charts.dot(form)));
    }

    private static XYTextAnnotation name(Point point, double x, boolean left, Form form) {
        XYTextAnnotation text = new XYTextAnnotation(left ? point.label() + "  " : "  " + point.label(), x, point.y());
        text.setFont(form.text());
        text.setPaint(Look.INK);
        text.setTextAnchor(left ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
        return text;
    }

    /** What they say, for those who cannot see them; empty where there are none. */
    String told(DoubleFunction<String> place) {
        List<String> told = new ArrayList<>();
        uprights.forEach(upright -> told.add(upright.label() + " " + place.apply(upright.x())));
        points.forEach(point -> told.add(point.label() + " " + place.apply(point.x()) + ": " + Told.number(point.y())));
        return told.isEmpty() ? "" : " Marked: " + String.join("; ", told) + ".";
    }
}
