package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.PaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;
import org.jfree.data.xy.DefaultXYZDataset;

/** Pictures of one output over one or two numbers of the design, and of two outputs against each other. */
public final class SweepPictures {

    /** More values than this along an axis are not all named. */
    private static final int MOST_NAMED = 20;

    private static final int MOST_LABELLED_CELLS = 150;
    private static final int UPRIGHT_PX = 9;
    private static final Color LIGHT = new Color(0xF7F3E8);
    private static final Color DARK = new Color(0x173F5A);
    private static final Shape DOT = new Ellipse2D.Double(-4, -4, 8, 8);
    private static final LineStyle[] STYLES = {
        new LineStyle(Palette.SLURRY, Palette.solid(2.2f)),
        new LineStyle(Palette.BACKUP, Palette.dashed(2.2f, 9, 4)),
        new LineStyle(Palette.FEED, Palette.dashed(2.2f, 3, 4)),
        new LineStyle(Palette.SUN, Palette.dashed(2.2f, 12, 4, 3, 4))
    };

    private SweepPictures() {}

    /**
     * A line over one number.
     *
     * @param name name of the line
     * @param values its values
     */
    public record Line(String name, double[] values) {}

    /** Draws up to four lines over one number. */
    public static Picture lines(String name, String title, String across, double[] at, String up, List<Line> lines) {
        System.setProperty("java.awt.headless", "true");
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        Legend legend = new Legend();
        for (int i = 0; i < lines.size(); i++) {
            data.addSeries(lines.get(i).name(), new double[][] {at, lines.get(i).values()});
            renderer.setSeriesPaint(i, STYLES[i].colour());
            renderer.setSeriesStroke(i, STYLES[i].stroke());
            renderer.setSeriesShape(i, DOT);
            legend.markedLine(lines.get(i).name(), STYLES[i], DOT);
        }
        XYPlot plot = plot(Charts.amounts(across), Charts.amounts(up));
        ((NumberAxis) plot.getDomainAxis()).setAutoRangeIncludesZero(false);
        plot.setDataset(data);
        plot.setRenderer(renderer);
        plot.addRangeMarker(new ValueMarker(0, Palette.INK, new BasicStroke(1.2f)));
        plot.setFixedLegendItems(legend.items());
        String caption = "Each dot is one run over the whole weather file.";
        return Rendering.of(new Drawing(name, title, caption, Charts.dressed(title, plot), 440));
    }

    /**
     * Draws one output over two numbers as cells, the darker the more.
     *
     * @param values by row (up) and column (across)
     */
    public static Picture cells(
            String name, String title, String across, double[] columns, String up, double[] rows, double[][] values) {
        System.setProperty("java.awt.headless", "true");
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<double[]> cells = new ArrayList<>();
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                double value = values[row][column];
                if (Double.isFinite(value)) {
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                    cells.add(new double[] {column, row, value});
                }
            }
        }
        XYPlot plot = plot(places(across, columns), places(up, rows));
        plot.setDataset(cells(cells));
        Shades shades = new Shades(least, most);
        XYBlockRenderer blocks = new XYBlockRenderer();
        blocks.setPaintScale(shades);
        plot.setRenderer(blocks);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setFixedLegendItems(new Legend()
                .area("least: " + number(least), new Swatch(LIGHT, Hatch.NONE))
                .area("most: " + number(most), new Swatch(DARK, Hatch.NONE))
                .items());
        if (cells.size() <= MOST_LABELLED_CELLS) {
            cells.forEach(cell -> label(plot, cell, shades));
        }
        String caption = "Each cell is one run over the whole weather file; the darker, the more.";
        // few rows must still leave room for the name of a key that stands upright beside them
        int height = Math.min(900, Math.max(220 + 46 * rows.length, 150 + UPRIGHT_PX * up.length()));
        return Rendering.of(new Drawing(name, title, caption, Charts.dressed(title, plot), height));
    }

    private static void label(XYPlot plot, double[] cell, Shades shades) {
        XYTextAnnotation text = new XYTextAnnotation(number(cell[2]), cell[0], cell[1]);
        text.setFont(Palette.TICK);
        text.setPaint(shades.share(cell[2]) > 0.5 ? Color.WHITE : Palette.INK);
        plot.addAnnotation(text);
    }

    private static DefaultXYZDataset cells(List<double[]> cells) {
        double[][] columns = new double[3][cells.size()];
        for (int i = 0; i < cells.size(); i++) {
            for (int j = 0; j < 3; j++) {
                columns[j][i] = cells.get(i)[j];
            }
        }
        DefaultXYZDataset data = new DefaultXYZDataset();
        data.addSeries("cells", columns);
        return data;
    }

    /**
     * Draws two outputs against each other, with those that no other beats in both.
     *
     * @param front indices of the unbeaten ones in order
     */
    public static Picture front(
            String name, String title, String across, double[] xs, String up, double[] ys, int[] front) {
        System.setProperty("java.awt.headless", "true");
        DefaultXYDataset all = new DefaultXYDataset();
        all.addSeries("all", new double[][] {xs, ys});
        double[][] best = new double[2][front.length];
        for (int i = 0; i < front.length; i++) {
            best[0][i] = xs[front[i]];
            best[1][i] = ys[front[i]];
        }
        DefaultXYDataset unbeaten = new DefaultXYDataset();
        unbeaten.addSeries("unbeaten", best);
        NumberAxis x = Charts.amounts(across);
        x.setAutoRangeIncludesZero(false);
        NumberAxis y = Charts.amounts(up);
        y.setAutoRangeIncludesZero(false);
        XYPlot plot = plot(x, y);
        plot.setDataset(0, unbeaten);
        plot.setRenderer(0, dots(STYLES[1], true, DOT));
        plot.setDataset(1, all);
        Shape small = new Rectangle2D.Double(-2, -2, 4, 4);
        plot.setRenderer(1, dots(new LineStyle(new Color(0x8FA3B0), Palette.solid(1)), false, small));
        plot.setFixedLegendItems(new Legend()
                .markedLine("not beaten in both", STYLES[1], DOT)
                .area("the others", new Swatch(new Color(0x8FA3B0), Hatch.NONE))
                .items());
        String caption = "Each mark is one run; along the line none is beaten by another in both figures at once.";
        return Rendering.of(new Drawing(name, title, caption, Charts.dressed(title, plot), 480));
    }

    private static XYLineAndShapeRenderer dots(LineStyle style, boolean line, Shape shape) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(line, true);
        renderer.setSeriesPaint(0, style.colour());
        renderer.setSeriesStroke(0, style.stroke());
        renderer.setSeriesShape(0, shape);
        return renderer;
    }

    private static XYPlot plot(NumberAxis across, NumberAxis up) {
        XYPlot plot = new XYPlot(null, across, up, null);
        plot.setRangeGridlinePaint(Palette.GRID);
        plot.setRangeGridlineStroke(new BasicStroke(1));
        plot.setDomainGridlinePaint(Palette.GRID);
        plot.setDomainGridlineStroke(Palette.dashed(1, 2, 3));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        return plot;
    }

    /** Values that stand at equal distances whatever they are; of many every second, third and so on is named. */
    private static NumberAxis places(String label, double[] values) {
        String[] names = new String[values.length];
        for (int i = 0; i < values.length; i++) {
            names[i] = number(values[i]);
        }
        SymbolAxis axis = new SymbolAxis(label, names);
        axis.setTickUnit(new NumberTickUnit(Math.ceil((double) values.length / MOST_NAMED)));
        axis.setGridBandsVisible(false);
        return Charts.dressed(axis);
    }

    private static String number(double value) {
        double size = Math.abs(value);
        if (value == Math.rint(value) || size >= 100) {
            return String.format(Locale.ROOT, "%.0f", value).replaceAll("^-0$", "0");
        }
        return String.format(Locale.ROOT, size >= 10 ? "%.1f" : "%.2f", value);
    }

    /** From light to dark in one hue, so that it also reads in grey. */
    private record Shades(double least, double most) implements PaintScale {

        double share(double value) {
            return most > least ? (value - least) / (most - least) : 0;
        }

        @Override
        public double getLowerBound() {
            return least;
        }

        @Override
        public double getUpperBound() {
            return most;
        }

        @Override
        public Color getPaint(double value) {
            double share = Math.min(1, Math.max(0, share(value)));
            return new Color(
                    between(LIGHT.getRed(), DARK.getRed(), share),
                    between(LIGHT.getGreen(), DARK.getGreen(), share),
                    between(LIGHT.getBlue(), DARK.getBlue(), share));
        }

        private static int between(int from, int to, double share) {
            return (int) Math.round(from + share * (to - from));
        }
    }
}
