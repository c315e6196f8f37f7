package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.util.Map;

/** A drawing surface whose colours, strokes, fonts, transform and measures of text are those of an image's surface. */
abstract class ImageState extends Graphics2D {

    /** The image's own surface. */
    final Graphics2D image;

    ImageState(Graphics2D image) {
        this.image = image;
    }

    @Override
    public void setPaint(Paint paint) {
        image.setPaint(paint);
    }

    @Override
    public void setColor(Color colour) {
        image.setColor(colour);
    }

    @Override
    public void setBackground(Color colour) {
        image.setBackground(colour);
    }

    @Override
    public void setStroke(Stroke stroke) {
        image.setStroke(stroke);
    }

    @Override
    public void setFont(Font font) {
        image.setFont(font);
    }

    @Override
    public void setComposite(Composite composite) {
        image.setComposite(composite);
    }

    @Override
    public void setPaintMode() {
        image.setPaintMode();
    }

    @Override
    public void setXORMode(Color colour) {
        image.setXORMode(colour);
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        image.setRenderingHint(key, value);
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {
        image.setRenderingHints(hints);
    }

    @Override
    public void addRenderingHints(Map<?, ?> hints) {
        image.addRenderingHints(hints);
    }

    @Override
    public void setTransform(AffineTransform transform) {
        image.setTransform(transform);
    }

    @Override
    public void transform(AffineTransform transform) {
        image.transform(transform);
    }

    @Override
    public void translate(int x, int y) {
        image.translate(x, y);
    }

    @Override
    public void translate(double x, double y) {
        image.translate(x, y);
    }

    @Override
    public void rotate(double radians) {
        image.rotate(radians);
    }

    @Override
    public void rotate(double radians, double x, double y) {
        image.rotate(radians, x, y);
    }

    @Override
    public void scale(double x, double y) {
        image.scale(x, y);
    }

    @Override
    public void shear(double x, double y) {
        image.shear(x, y);
    }

    @Override
    public void clip(Shape shape) {
        image.clip(shape);
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        image.clipRect(x, y, width, height);
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        image.setClip(x, y, width, height);
    }

    @Override
    public void setClip(Shape shape) {
        image.setClip(shape);
    }

    @Override
    public void dispose() {
        image.dispose();
    }

    @Override
    public Paint getPaint() {
        return image.getPaint();
    }

    @Override
    public Color getColor() {
        return image.getColor();
    }

    @Override
    public Color getBackground() {
        return image.getBackground();
    }

    @Override
    public Stroke getStroke() {
        return image.getStroke();
    }

    @Override
    public Font getFont() {
        return image.getFont();
    }

    @Override
    public Composite getComposite() {
        return image.getComposite();
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return image.getRenderingHint(key);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return image.getRenderingHints();
    }

    @Override
    public AffineTransform getTransform() {
        return image.getTransform();
    }

    @Override
    public Shape getClip() {
        return image.getClip();
    }

    @Override
    public Rectangle getClipBounds() {
        return image.getClipBounds();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return image.getFontMetrics(font);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return image.getFontRenderContext();
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return image.getDeviceConfiguration();
    }

    @Override
    public boolean hit(Rectangle area, Shape shape, boolean onStroke) {
        return image.hit(area, shape, onStroke);
    }
}
