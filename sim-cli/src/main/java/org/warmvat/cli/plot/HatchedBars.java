package org.warmvat.cli.plot;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import java.util.List;
import org.jfree.chart.renderer.category.BarPainter;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.xy.XYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.RectangleEdge;

/** Paints bars flat, with hatching and a thin outline. */
record HatchedBars(List<Look> looks, Form form) implements BarPainter, XYBarPainter {

    @Override
    public void paintBar(
            Graphics2D g2, BarRenderer renderer, int row, int column, RectangularShape bar, RectangleEdge base) {
        paint(g2, looks.get(row), form, bar);
    }

    @Override
    public void paintBar(
            Graphics2D g2, XYBarRenderer renderer, int row, int column, RectangularShape bar, RectangleEdge base) {
        paint(g2, looks.get(row), form, bar);
    }

    /** Paints one bar; nothing where it has no height or width. */
    static void paint(Graphics2D g2, Look look, Form form, RectangularShape bar) {
        if (bar.getWidth() <= 0 || bar.getHeight() <= 0) {
            return;
        }
        Rectangle2D area = bar.getBounds2D();
        g2.setPaint(look.fill());
        g2.fill(area);
        if (look.hatch() != Hatch.NONE) {
            g2.setStroke(form.solid(1));
            g2.setPaint(look.hatchColour());
            g2.draw(look.hatch().lines(area));
        }
        g2.setPaint(Look.INK);
        g2.setStroke(form.solid(0.7f));
        g2.draw(area);
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
