package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.RectangularShape;
import java.util.List;
import org.jfree.chart.renderer.category.BarPainter;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.xy.XYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.RectangleEdge;

/** Paints bars flat, with hatching and a thin outline. */
record HatchedBars(List<Swatch> swatches) implements BarPainter, XYBarPainter {

    @Override
    public void paintBar(
            Graphics2D g2, BarRenderer renderer, int row, int column, RectangularShape bar, RectangleEdge base) {
        paint(g2, row, bar);
    }

    @Override
    public void paintBar(
            Graphics2D g2, XYBarRenderer renderer, int row, int column, RectangularShape bar, RectangleEdge base) {
        paint(g2, row, bar);
    }

    private void paint(Graphics2D g2, int series, RectangularShape bar) {
        if (bar.getWidth() <= 0 || bar.getHeight() <= 0) {
            return;
        }
        Swatch swatch = swatches.get(series);
        g2.setPaint(swatch.fill());
        g2.fill(bar.getBounds2D());
        g2.setStroke(new BasicStroke(1));
        if (swatch.hatch() != Hatch.NONE) {
            g2.setPaint(swatch.hatchColour());
            g2.draw(swatch.hatch().lines(bar.getBounds2D()));
        }
        g2.setPaint(Palette.INK);
        g2.setStroke(new BasicStroke(0.6f));
        g2.draw(bar.getBounds2D());
    }

    @Override
    public void paintBarShadow(
            Graphics2D g2,
            BarRenderer renderer,
            int row,
            int column,
            RectangularShape bar,
            RectangleEdge base,
            boolean pegShadow) {
        // Bars cast no shadow.
    }

    @Override
    public void paintBarShadow(
            Graphics2D g2,
            XYBarRenderer renderer,
            int row,
            int column,
            RectangularShape bar,
            RectangleEdge base,
            boolean pegShadow) {
        // Bars cast no shadow.
    }
}
