package org.warmvat.cli.plot;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Arrays;
import java.util.Optional;

/**
 * Draws on an image and writes the same as SVG, so that a chart is laid out once for both. Takes what charts draw: shapes in
 * plain colours with plain strokes, and plain text; all else is refused.
 */
final class TwoForms extends ChartSurface {

    private final double dotsPerUnit;
    private final Svg svg;

    /**
     * A surface.
     *
     * @param image the image's surface, scaled already
     * @param dotsPerUnit by how much it is scaled
     * @param svg what the picture is written to
     */
    TwoForms(Graphics2D image, double dotsPerUnit, Svg svg) {
        super(image);
        this.dotsPerUnit = dotsPerUnit;
        this.svg = svg;
    }

    @Override
    public void draw(Shape shape) {
        image.draw(shape);
        svg.stroke(placed(shape), colour(), (BasicStroke) image.getStroke());
    }

    @Override
    public void fill(Shape shape) {
        image.fill(shape);
        svg.fill(placed(shape), colour());
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(String text, float x, float y) {
        image.drawString(text, x, y);
        svg.text(text, x, y, placing(), image.getFont(), colour());
    }

    @Override
    public void clip(Shape shape) {
        super.clip(shape);
        clipped();
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        super.clipRect(x, y, width, height);
        clipped();
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        super.setClip(x, y, width, height);
        clipped();
    }

    @Override
    public void setClip(Shape shape) {
        super.setClip(shape);
        clipped();
    }

    private void clipped() {
        svg.clip(Optional.ofNullable(image.getClip()).map(this::placed));
    }

    private Shape placed(Shape shape) {
        AffineTransform placing = placing();
        return placing.isIdentity() ? shape : placing.createTransformedShape(shape);
    }

    /** From where the chart draws to the picture. */
    private AffineTransform placing() {
        double[] dots = new double[6];
        image.getTransform().getMatrix(dots);
        return new AffineTransform(
                Arrays.stream(dots).map(dot -> dot / dotsPerUnit).toArray());
    }

    private Color colour() {
        Color colour = (Color) image.getPaint();
        int cover = Math.round(colour.getAlpha() * ((AlphaComposite) image.getComposite()).getAlpha());
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), cover);
    }
}
