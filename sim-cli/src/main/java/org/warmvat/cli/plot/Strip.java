package org.warmvat.cli.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultIntervalXYDataset;
import org.jfree.data.xy.DefaultXYDataset;

/** One strip of a line chart. */
final class Strip {

    private record Line(String label, Look look, Points points, boolean dotted) {}

    private record Banded(String lineLabel, String bandLabel, Look look, Band band) {}

    private final String label;
    private final double leastSpan;
    private final boolean withZero;
    private final List<Line> lines = new ArrayList<>();
    private final List<Banded> bands = new ArrayList<>();
    private final Pins pins = new Pins();

    Strip(String label, double leastSpan, boolean withZero) {
        this.label = label;
        this.leastSpan = leastSpan;
        this.withZero = withZero;
    }

    void line(String name, Look look, Points points, boolean dotted) {
        lines.add(new Line(name, look, points, dotted));
    }

    void band(String lineLabel, String bandLabel, Look look, Band band) {
        bands.add(new Banded(lineLabel, bandLabel, look, band));
    }

    boolean hasDots() {
        return lines.stream().anyMatch(Line::dotted);
    }

    Pins pins() {
        return pins;
    }

    /** The strip in a form, from one place of the axis to another, with its lines entered in the common legend. */
    XYPlot plot(Form form, DoubleUnaryOperator place, double from, double to, Legend legend) {
        NumberAxis axis = Charts.around(label, leastSpan, form);
        axis.setAutoRangeIncludesZero(withZero);
        XYPlot plot = Charts.plot(null, axis);
        plot.setDataset(0, data(form, place, from, to));
        plot.setRenderer(0, renderer(form));
        if (!bands.isEmpty()) {
            plot.setRenderer(1, bandRenderer(form));
            plot.setDataset(1, bandData(place));
        }
        pins.addTo(plot, place, (from + to) / 2, true, form);
        enter(legend, form);
        return plot;
    }

    private XYLineAndShapeRenderer renderer(Form form) {
        XYLineAndShapeRenderer renderer =
                Charts.lines(form, lines.stream().map(Line::look).toArray(Look[]::new));
        for (int i = 0; i < lines.size(); i++) {
            renderer.setSeriesShapesVisible(i, lines.get(i).dotted());
        }
        return renderer;
    }

    private void enter(Legend legend, Form form) {
        for (Banded banded : bands) {
            legend.line(banded.lineLabel(), banded.look());
            legend.area(banded.bandLabel(), banded.look().fill());
        }
        for (Line line : lines) {
            if (line.dotted()) {
                legend.markedLine(line.label(), line.look(), Charts.dot(form));
            } else {
                legend.line(line.label(), line.look());
            }
        }
    }

    private DefaultXYDataset data(Form form, DoubleUnaryOperator place, double from, double to) {
        DefaultXYDataset data = new DefaultXYDataset();
        for (int i = 0; i < lines.size(); i++) {
            Points points = lines.get(i).points();
            Points placed = new Points(placed(points.x(), place), points.y()).thinned(from, to, form.widthPx());
            data.addSeries(i + lines.get(i).label(), new double[][] {placed.x(), placed.y()});
        }
        return data;
    }

    private static double[] placed(double[] x, DoubleUnaryOperator place) {
        return Arrays.stream(x).map(place).toArray();
    }

    private DeviationRenderer bandRenderer(Form form) {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1);
        for (int i = 0; i < bands.size(); i++) {
            Look look = bands.get(i).look();
            renderer.setSeriesPaint(i, look.line());
            renderer.setSeriesStroke(i, look.stroke(form));
            renderer.setSeriesFillPaint(i, look.fill());
        }
        return renderer;
    }

    private DefaultIntervalXYDataset bandData(DoubleUnaryOperator place) {
        DefaultIntervalXYDataset data = new DefaultIntervalXYDataset();
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i).band();
            double[] x = placed(band.x(), place);
            data.addSeries(
                    i + bands.get(i).lineLabel(), new double[][] {x, x, x, band.middle(), band.least(), band.most()});
        }
        return data;
    }

    /** What is seen in it. */
    String told(DoubleFunction<String> place) {
        Stream<String> banded = bands.stream()
                .flatMap(one -> Stream.of(
                        Told.course(one.lineLabel(), one.band().x(), one.band().middle(), place),
                        one.bandLabel() + ": from "
                                + Told.number(least(one.band().least())) + " to "
                                + Told.number(-least(Arrays.stream(one.band().most())
                                        .map(y -> -y)
                                        .toArray()))));
        Stream<String> lined = lines.stream()
                .map(line -> Told.course(
                        line.label(), line.points().x(), line.points().y(), place));
        return label + ": " + String.join("; ", Stream.concat(banded, lined).toList());
    }

    private static double least(double[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }
}
