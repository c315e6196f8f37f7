package org.warmvat.cli.plot;

import java.util.Arrays;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.data.xy.DefaultIntervalXYDataset;

/** How often a quantity fell into each of some equal ranges. */
public final class Histogram extends Drawing {

    private static final int FEWEST = 6;
    private static final int MOST = 24;

    private final String quantity;
    private final double[] values;
    private final Pins pins = new Pins();

    private Histogram(String name, String title, String quantity, double[] values) {
        super(name, title);
        this.quantity = quantity;
        this.values = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    }

    /** A histogram of a quantity with its unit; what is not finite is left out. */
    public static Histogram of(String name, String title, String quantity, double... values) {
        return new Histogram(name, title, quantity, values);
    }

    /** How to read it. */
    public Histogram caption(String how) {
        explain(how);
        return this;
    }

    /** An upright line, named. */
    public Histogram upright(String label, double x) {
        pins.upright(label, x);
        return this;
    }

    @Override
    public String alternative() {
        return title() + ": " + values.length + " values of " + quantity + " from " + Told.number(quantile(0)) + " to "
                + Told.number(quantile(1)) + ", half of them between " + Told.number(quantile(0.25)) + " and "
                + Told.number(quantile(0.75)) + ", in the middle " + Told.number(quantile(0.5)) + "."
                + pins.told(x -> "at " + Told.number(x));
    }

    private double quantile(double share) {
        return values.length == 0 ? Double.NaN : values[(int) Math.round(share * (values.length - 1))];
    }

    /** Ranges after Freedman and Diaconis (1981): twice the middle half over the cube root of the count. */
    private int ranges() {
        double width = 2 * (quantile(0.75) - quantile(0.25)) / Math.cbrt(values.length);
        double ranges = width > 0 ? Math.ceil((quantile(1) - quantile(0)) / width) : FEWEST;
        return (int) Math.max(FEWEST, Math.min(MOST, ranges));
    }

    @Override
    Sheet on(Form form) {
        NumberAxis across = Charts.around(quantity, 1e-8, form);
        NumberAxis up = Charts.amounts("how many of " + values.length, form);
        XYPlot plot = Charts.plot(across, up);
        plot.setDataset(counts());
        XYBarRenderer bars = new XYBarRenderer();
        bars.setUseYInterval(true);
        bars.setBarPainter(new HatchedBars(List.of(Look.SLURRY), form));
        bars.setShadowVisible(false);
        plot.setRenderer(bars);
        pins.addTo(plot, x -> x, (quantile(0) + quantile(1)) / 2, true, form);
        plot.setFixedLegendItems(new Legend(form).items());
        return Charts.sheet(title(), plot, form, form.heightPx(5, form == Form.WIDE ? 280 : 190));
    }

    private DefaultIntervalXYDataset counts() {
        int ranges = values.length == 0 ? 0 : ranges();
        double least = quantile(0);
        double span = Math.max(quantile(1) - least, Math.max(1e-6, Math.abs(least) * 1e-3));
        double[][] columns = new double[6][ranges];
        for (int i = 0; i < ranges; i++) {
            columns[1][i] = least + span * i / ranges;
            columns[2][i] = least + span * (i + 1) / ranges;
            columns[0][i] = (columns[1][i] + columns[2][i]) / 2;
        }
        for (double value : values) {
            int range = (int) Math.min(ranges - 1.0, Math.floor((value - least) / span * ranges));
            columns[3][range]++;
            columns[5][range]++;
        }
        DefaultIntervalXYDataset counts = new DefaultIntervalXYDataset();
        counts.addSeries("counts", columns);
        return counts;
    }
}
