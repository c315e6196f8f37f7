package org.warmvat.cli.plot;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Bars one below the other, each with its name and its value written. */
public final class RankedBars extends Drawing {

    private static final double BAR_SHARE = 0.62;

    private record Bar(String label, Look look, double value, String written) {}

    private final List<Bar> bars = new ArrayList<>();

    private RankedBars(String name, String title) {
        super(name, title);
    }

    /** A chart. */
    public static RankedBars of(String name, String title) {
        return new RankedBars(name, title);
    }

    /** How to read it. */
    public RankedBars caption(String how) {
        explain(how);
        return this;
    }

    /**
     * A further bar.
     *
     * @param label its name
     * @param look how it is filled
     * @param value its length; a negative one goes to the left
     * @param written the value with its unit, as it stands beside the bar
     */
    public RankedBars bar(String label, Look look, double value, String written) {
        bars.add(new Bar(label, look, value, written));
        return this;
    }

    @Override
    public String alternative() {
        return title() + ". "
                + String.join(
                        "; ",
                        bars.stream()
                                .map(bar -> bar.label() + ": " + bar.written())
                                .toList()) + ".";
    }

    @Override
    Sheet on(Form form) {
        boolean wide = form == Form.WIDE;
        double rowPx = (wide ? 1.9 : 3) * form.textPx();
        double topPx = 3.2 * form.textPx();
        return new Sheet((int) Math.ceil(topPx + bars.size() * rowPx + 6), g2 -> {
            g2.setPaint(Look.INK);
            g2.setFont(form.title());
            g2.drawString(title(), wide ? 14 : 4, (float) (1.7 * form.textPx()));
            g2.setFont(form.text());
            Scale scale = scale(g2.getFontMetrics(), form);
            for (int i = 0; i < bars.size(); i++) {
                paint(bars.get(i), g2, form, scale, topPx + i * rowPx);
            }
        });
    }

    /** Where zero lies and how long a unit is. */
    private record Scale(double leftPx, double zeroPx, double unitPx) {}

    private Scale scale(FontMetrics metrics, Form form) {
        double least = Math.min(0, bars.stream().mapToDouble(Bar::value).min().orElse(0));
        double most = Math.max(0, bars.stream().mapToDouble(Bar::value).max().orElse(0));
        int names = bars.stream()
                .mapToInt(bar -> metrics.stringWidth(bar.label()))
                .max()
                .orElse(0);
        int values = bars.stream()
                .mapToInt(bar -> metrics.stringWidth(bar.written()))
                .max()
                .orElse(0);
        double left = form == Form.WIDE ? 14 + names + 12 : 4;
        double room = form.widthPx() - left - values - 24;
        double unit = most > least ? room / (most - least) : 0;
        return new Scale(left, left - least * unit, unit);
    }

    private static void paint(Bar bar, Graphics2D g2, Form form, Scale scale, double top) {
        double high = BAR_SHARE * 1.9 * form.textPx();
        boolean wide = form == Form.WIDE;
        double barTop = wide ? top : top + 1.15 * form.textPx();
        float line = (float) (barTop + high / 2 + 0.36 * form.textPx());
        double left = scale.zeroPx() + Math.min(0, bar.value()) * scale.unitPx();
        Rectangle2D area = new Rectangle2D.Double(left, barTop, Math.abs(bar.value()) * scale.unitPx(), high);
        HatchedBars.paint(g2, bar.look(), form, area);
        g2.setPaint(Look.INK);
        g2.setFont(form.text());
        float labelPx =
                (float) (wide ? scale.leftPx() - 12 - g2.getFontMetrics().stringWidth(bar.label()) : 4);
        g2.drawString(bar.label(), labelPx, wide ? line : (float) top + form.textPx() * 0.9f);
        g2.drawString(bar.written(), (float) (area.getMaxX() + 8), line);
    }
}
