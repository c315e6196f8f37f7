package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** Stacked bars side by side, by month or by anything else, up from zero and down from it, with a line over them if wanted. */
public final class BarChart extends Drawing {

    /** Where a bar stands. */
    private record Place(int index, String name, String label) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            return Integer.compare(index, other.index);
        }

        @Override
        public String toString() {
            return label;
        }
    }

    private record Series(String label, Look look, double[] values) {}

    private final String up;
    private final List<String> places;
    private final List<String> labels;
    private final List<Series> stacked = new ArrayList<>();
    private final List<Series> lines = new ArrayList<>();

    private BarChart(String name, String title, String up, List<String> places, List<String> labels) {
        super(name, title);
        this.up = up;
        this.places = places;
        this.labels = labels;
    }

    /** Bars with names. */
    public static BarChart of(String name, String title, String up, List<String> places) {
        return new BarChart(name, title, up, places, places);
    }

    /** A bar for each month. */
    public static BarChart byMonth(String name, String title, String up, List<YearMonth> months) {
        DateTimeFormatter label = DateTimeFormatter.ofPattern(months.size() > 12 ? "MMM yy" : "MMM", Locale.ENGLISH);
        DateTimeFormatter full = DateTimeFormatter.ofPattern(months.size() > 12 ? "MMMM yyyy" : "MMMM", Locale.ENGLISH);
        return new BarChart(
                name,
                title,
                up,
                months.stream().map(full::format).toList(),
                months.stream().map(label::format).toList());
    }

    /** A bar for each week, given its first day; the first week of each month is named. */
    public static BarChart byWeek(String name, String title, String up, List<LocalDate> firstDays) {
        DateTimeFormatter label = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
        DateTimeFormatter full = DateTimeFormatter.ofPattern("'the week of' d MMMM", Locale.ENGLISH);
        List<String> labels = IntStream.range(0, firstDays.size())
                .mapToObj(i -> i > 0
                                && firstDays.get(i).getMonth()
                                        == firstDays.get(i - 1).getMonth()
                        ? ""
                        : label.format(firstDays.get(i)))
                .toList();
        return new BarChart(
                name, title, up, firstDays.stream().map(full::format).toList(), labels);
    }

    /** How to read it. */
    public BarChart caption(String how) {
        explain(how);
        return this;
    }

    /** One layer of the bars; positive values stand up, negative hang down. One that is nothing throughout is left out. */
    public BarChart stack(String label, Look look, double... values) {
        for (double value : values) {
            if (value != 0) {
                stacked.add(new Series(label, look, values));
                break;
            }
        }
        return this;
    }

    /** A line with a mark for each bar. */
    public BarChart line(String label, Look look, double... values) {
        lines.add(new Series(label, look, values));
        return this;
    }

    @Override
    Sheet on(Form form) {
        List<Place> along = along(form);
        CategoryPlot plot = new CategoryPlot(data(stacked, along), axis(form), Charts.amounts(up, form), bars(form));
        Charts.dress(plot);
        plot.setRenderer(1, lineRenderer(form));
        plot.setDataset(1, data(lines, along));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.addRangeMarker(new ValueMarker(0, Look.INK, new BasicStroke(1.2f)));
        Legend legend = new Legend(form);
        stacked.forEach(series -> legend.area(series.label(), series.look()));
        lines.forEach(series -> legend.markedLine(series.label(), series.look(), diamond(form)));
        plot.setFixedLegendItems(legend.items());
        return Charts.sheet(title(), plot, form, form.heightPx(6.5, form == Form.WIDE ? 280 : 190));
    }

    /** The places; of labels that would run into each other every second, third and so on stands. */
    private List<Place> along(Form form) {
        long shown = labels.stream().filter(label -> !label.isEmpty()).count();
        int longest = labels.stream().mapToInt(String::length).max().orElse(1);
        long most = Math.max(1, (long) (0.85 * form.widthPx() / (0.68 * form.textPx() * (longest + 0.5))));
        long step = (shown + most - 1) / most;
        List<Place> along = new ArrayList<>();
        int counted = 0;
        for (int i = 0; i < labels.size(); i++) {
            boolean stands = !labels.get(i).isEmpty() && counted++ % Math.max(1, step) == 0;
            along.add(new Place(i, places.get(i), stands ? labels.get(i) : ""));
        }
        return along;
    }

    private CategoryAxis axis(Form form) {
        CategoryAxis axis = Charts.dressed(new CategoryAxis(), form);
        axis.setCategoryMargin(0.2);
        axis.setLowerMargin(0.01);
        axis.setUpperMargin(0.01);
        axis.setMaximumCategoryLabelWidthRatio(places.size());
        return axis;
    }

    private static DefaultCategoryDataset data(List<Series> all, List<Place> along) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        for (int i = 0; i < along.size(); i++) {
            for (Series series : all) {
                data.addValue(series.values()[i], series.label(), along.get(i));
            }
        }
        return data;
    }

    private StackedBarRenderer bars(Form form) {
        StackedBarRenderer bars = new StackedBarRenderer();
        bars.setBarPainter(new HatchedBars(stacked.stream().map(Series::look).toList(), form));
        bars.setShadowVisible(false);
        return bars;
    }

    private LineAndShapeRenderer lineRenderer(Form form) {
        LineAndShapeRenderer renderer = new LineAndShapeRenderer(true, true);
        for (int i = 0; i < lines.size(); i++) {
            renderer.setSeriesPaint(i, lines.get(i).look().line());
            renderer.setSeriesStroke(i, lines.get(i).look().stroke(form));
            renderer.setSeriesShape(i, diamond(form));
        }
        return renderer;
    }

    private static Shape diamond(Form form) {
        double half = form == Form.WIDE ? 5 : 2.8;
        Path2D path = new Path2D.Double();
        path.moveTo(0, -half);
        path.lineTo(half, 0);
        path.lineTo(0, half);
        path.lineTo(-half, 0);
        path.closePath();
        return path;
    }

    @Override
    public String alternative() {
        double[] x = IntStream.range(0, places.size()).asDoubleStream().toArray();
        StringBuilder told = new StringBuilder(title() + ", " + up);
        for (List<Series> all : List.of(stacked, lines)) {
            for (Series series : all) {
                told.append(". ")
                        .append(Told.range(series.label(), x, series.values(), at -> "in " + places.get((int) at)));
            }
        }
        return told.append('.').toString();
    }
}
