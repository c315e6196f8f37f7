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
        int row = 0;
        for (Upright upright : uprights) {
            ValueMarker marker = new ValueMarker(place.applyAsDouble(upright.x()), Look.INK, Look.MARK.stroke(form));
            if (named) {
                boolean left = marker.getValue() > middle;
                marker.setLabel(upright.label());
                marker.setLabelFont(form.text());
                marker.setLabelPaint(Look.INK);
                marker.setLabelBackgroundColor(Color.WHITE);
                marker.setLabelAnchor(left ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
                marker.setLabelTextAnchor(left ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
                marker.setLabelOffset(new RectangleInsets(2 + 1.4 * form.textPx() * row++, 3, 2, 3));
            }
            plot.addDomainMarker(marker);
        }
        if (!points.isEmpty()) {
            addPoints(plot, place, middle, form);
        }
    }

    private void addPoints(XYPlot plot, DoubleUnaryOperator place, double middle, Form form) {
        double[][] dots = new double[2][points.size()];
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            dots[0][i] = place.applyAsDouble(point.x());
            dots[1][i] = point.y();
            boolean left = dots[0][i] > middle;
            XYTextAnnotation text =
                    new XYTextAnnotation(left ? point.label() + "  " : "  " + point.label(), dots[0][i], dots[1][i]);
            text.setFont(form.text());
            text.setPaint(Look.INK);
            text.setTextAnchor(left ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
            plot.addAnnotation(text);
        }
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("marked", dots);
        int index = plot.getDatasetCount();
        plot.setDataset(index, data);
        plot.setRenderer(index, PointChart.dots(Look.NEED, form, Charts.dot(form)));
    }

    /** What they say, for those who cannot see them; empty where there are none. */
    String told(DoubleFunction<String> place) {
        List<String> told = new ArrayList<>();
        uprights.forEach(upright -> told.add(upright.label() + " " + place.apply(upright.x())));
        points.forEach(point -> told.add(point.label() + " " + place.apply(point.x()) + ": " + Told.number(point.y())));
        return told.isEmpty() ? "" : " Marked: " + String.join("; ", told) + ".";
    }
}
