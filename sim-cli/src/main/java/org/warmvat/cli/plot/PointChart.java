package org.warmvat.cli.plot;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** Points over one quantity and another, some of them joined to a front, some named. */
public final class PointChart extends Drawing {

    private static final Shape SMALL = new Rectangle2D.Double(-2, -2, 4, 4);

    /** Share of the height above the highest point, where its name may stand. */
    private static final double ROOM_FOR_NAMES = 0.12;

    private record Group(String label, Look look, Points points, boolean front) {}

    private final String across;
    private final String up;
    private final List<Group> groups = new ArrayList<>();
    private final Pins pins = new Pins();

    private PointChart(String name, String title, String across, String up) {
        super(name, title);
        this.across = across;
        this.up = up;
    }

    /** A chart over two quantities with their units. */
    public static PointChart of(String name, String title, String across, String up) {
        return new PointChart(name, title, across, up);
    }

    /** How to read it. */
    public PointChart caption(String how) {
        explain(how);
        return this;
    }

    /** A cloud of points. */
    public PointChart points(String label, Look look, Points points) {
        groups.add(new Group(label, look, points, false));
        return this;
    }

    /** Points joined by a line, in their order. */
    public PointChart front(String label, Look look, Points points) {
        groups.add(new Group(label, look, points, true));
        return this;
    }

    /** A point marked and named. */
    public PointChart mark(String label, double x, double y) {
        pins.point(label, x, y);
        return this;
    }

    @Override
    Sheet on(Form form) {
        NumberAxis x = Charts.around(across, 1e-8, form);
        NumberAxis y = Charts.around(up, 1e-8, form);
        y.setUpperMargin(ROOM_FOR_NAMES);
        XYPlot plot = Charts.plot(x, y);
        Legend legend = new Legend(form);
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            DefaultXYDataset data = new DefaultXYDataset();
            data.addSeries(
                    group.label(),
                    new double[][] {group.points().x(), group.points().y()});
            plot.setDataset(i, data);
            plot.setRenderer(i, renderer(group, form));
            if (group.front()) {
                legend.markedLine(group.label(), group.look(), Charts.dot(form));
            } else {
                legend.mark(group.label(), group.look(), SMALL);
            }
        }
        double[] all = groups.stream()
                .flatMapToDouble(group -> Arrays.stream(group.points().x()))
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        pins.addTo(plot, at -> at, all.length == 0 ? 0 : (all[0] + all[all.length - 1]) / 2, true, form);
        plot.setFixedLegendItems(legend.items());
        return Charts.sheet(title(), plot, form, form.heightPx(6, form == Form.WIDE ? 330 : 220));
    }

    private static XYLineAndShapeRenderer renderer(Group group, Form form) {
        XYLineAndShapeRenderer renderer = dots(group.look(), form, group.front() ? Charts.dot(form) : SMALL);
        renderer.setDefaultLinesVisible(group.front());
        return renderer;
    }

    /** Draws one series as marks without a line. */
    static XYLineAndShapeRenderer dots(Look look, Form form, Shape shape) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setDrawOutlines(false);
        renderer.setSeriesPaint(0, look.line());
        renderer.setSeriesStroke(0, look.stroke(form));
        renderer.setSeriesShape(0, shape);
        return renderer;
    }

    @Override
    public String alternative() {
        StringBuilder told = new StringBuilder(title() + ": " + up + " over " + across);
        for (Group group : groups) {
            told.append(". ")
                    .append(group.points().x().length)
                    .append(group.front() ? " joined" : " points")
                    .append(", ")
                    .append(Told.range(
                            group.label(), group.points().x(), group.points().y(), x -> "at " + Told.number(x)));
        }
        return told.append('.').append(pins.told(x -> "at " + Told.number(x))).toString();
    }
}
