package org.warmvat.cli.plot;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.PaintScale;
import org.jfree.chart.renderer.xy.XYBlockRenderer;
import org.jfree.data.xy.DefaultXYZDataset;

/** One figure over two numbers, as cells, the darker the more; each written where there is room. */
public final class CellChart extends Drawing {

    /** More values than this along an axis are not all named. */
    private static final int MOST_NAMED = 20;

    private static final int UPRIGHT_PX = 9;
    private static final Color LIGHT = new Color(0xF7F3E8);
    private static final Color DARK = new Color(0x173F5A);

    /**
     * One side of the field of cells.
     *
     * @param label what stands along it, with its unit
     * @param values its values
     */
    public record Side(String label, double... values) {}

    private final Side across;
    private final Side up;
    private final double[][] values;

    /**
     * A chart.
     *
     * @param name file name without ending
     * @param title title
     * @param across the number along, with its unit, and its values
     * @param up the number upwards, with its unit, and its values
     * @param values by row (up) and column (across); what is not finite leaves a hole
     */
    public CellChart(String name, String title, Side across, Side up, double[][] values) {
        super(name, title);
        this.across = across;
        this.up = up;
        this.values = values;
    }

    /** How to read it. */
    public CellChart caption(String how) {
        explain(how);
        return this;
    }

    @Override
    Sheet on(Form form) {
        List<double[]> cells = cells();
        Shades shades = shades(cells);
        XYPlot plot = Charts.plot(places(across, form), places(up, form));
        plot.setDataset(data(cells));
        XYBlockRenderer blocks = new XYBlockRenderer();
        blocks.setPaintScale(shades);
        plot.setRenderer(blocks);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setFixedLegendItems(new Legend(form)
                .area("least: " + Told.number(shades.least()), LIGHT)
                .area("most: " + Told.number(shades.most()), DARK)
                .items());
        double cellPx = 0.8 * form.widthPx() / Math.max(1, across.values().length);
        if (cellPx > 3 * form.textPx()) {
            cells.forEach(cell -> label(plot, cell, shades, form));
        }
        // few rows must still leave room for the words that stand upright beside them
        int rowPx = form == Form.WIDE ? 46 : 30;
        int height = Math.min(
                900,
                Math.max(
                        150 + rowPx * up.values().length,
                        150 + UPRIGHT_PX * up.label().length()));
        return Charts.sheet(title(), plot, form, height);
    }

    private List<double[]> cells() {
        List<double[]> cells = new ArrayList<>();
        for (int row = 0; row < values.length; row++) {
            for (int column = 0; column < values[row].length; column++) {
                if (Double.isFinite(values[row][column])) {
                    cells.add(new double[] {column, row, values[row][column]});
                }
            }
        }
        return cells;
    }

    private static Shades shades(List<double[]> cells) {
        return new Shades(
                cells.stream().mapToDouble(cell -> cell[2]).min().orElse(0),
                cells.stream().mapToDouble(cell -> cell[2]).max().orElse(0));
    }

    private static void label(XYPlot plot, double[] cell, Shades shades, Form form) {
        XYTextAnnotation text = new XYTextAnnotation(Told.number(cell[2]), cell[0], cell[1]);
        text.setFont(form.text());
        text.setPaint(Look.lightness(shades.getPaint(cell[2])) < 128 ? Color.WHITE : Look.INK);
        plot.addAnnotation(text);
    }

    private static DefaultXYZDataset data(List<double[]> cells) {
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

    /** Values that stand at equal distances whatever they are; of many every second, third and so on is named. */
    private static NumberAxis places(Side side, Form form) {
        String[] names = new String[side.values().length];
        Arrays.setAll(names, i -> Told.number(side.values()[i]));
        SymbolAxis axis = new SymbolAxis(side.label(), names);
        axis.setTickUnit(new NumberTickUnit(
                Math.ceil(names.length / (double) (form == Form.WIDE ? MOST_NAMED : MOST_NAMED / 3))));
        axis.setGridBandsVisible(false);
        return Charts.dressed(axis, form);
    }

    @Override
    public String alternative() {
        List<double[]> cells = cells();
        Shades shades = shades(cells);
        return title() + " over " + across.label() + " and " + up.label() + told(shades.least(), shades, cells)
                + told(shades.most(), shades, cells) + ".";
    }

    private String told(double extreme, Shades shades, List<double[]> cells) {
        return cells.stream()
                .filter(cell -> cell[2] == extreme)
                .findFirst()
                .map(cell -> (extreme == shades.least() ? "; lowest " : "; highest ") + Told.number(extreme) + " at "
                        + Told.number(across.values()[(int) cell[0]]) + " and "
                        + Told.number(up.values()[(int) cell[1]]))
                .orElse("");
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
