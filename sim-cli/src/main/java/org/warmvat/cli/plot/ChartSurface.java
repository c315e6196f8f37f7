package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;

/** Refuses all ways of drawing that charts make no use of, so that none is lost unseen. */
abstract class ChartSurface extends ImageState {

    ChartSurface(Graphics2D image) {
        super(image);
    }

    private static UnsupportedOperationException unused() {
        return new UnsupportedOperationException("charts are drawn by shapes and plain text only");
    }

    @Override
    public Graphics create() {
        throw unused();
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        throw unused();
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw unused();
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        throw unused();
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        throw unused();
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        throw unused();
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        throw unused();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw unused();
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        throw unused();
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        throw unused();
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        throw unused();
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        throw unused();
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int from, int angle) {
        throw unused();
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int from, int angle) {
        throw unused();
    }

    @Override
    public void drawPolyline(int[] x, int[] y, int points) {
        throw unused();
    }

    @Override
    public void drawPolygon(int[] x, int[] y, int points) {
        throw unused();
    }

    @Override
    public void fillPolygon(int[] x, int[] y, int points) {
        throw unused();
    }

    @Override
    public void drawImage(BufferedImage picture, BufferedImageOp change, int x, int y) {
        throw unused();
    }

    @Override
    public void drawRenderedImage(RenderedImage picture, AffineTransform placed) {
        throw unused();
    }

    @Override
    public void drawRenderableImage(RenderableImage picture, AffineTransform placed) {
        throw unused();
    }

    @Override
    public boolean drawImage(Image picture, AffineTransform placed, ImageObserver observer) {
        throw unused();
    }

    @Override
    public boolean drawImage(Image picture, int x, int y, ImageObserver observer) {
        throw unused();
    }

    @Override
    public boolean drawImage(Image picture, int x, int y, Color ground, ImageObserver observer) {
        throw unused();
    }

    @Override
    public boolean drawImage(Image picture, int x, int y, int width, int height, ImageObserver observer) {
        throw unused();
    }

    @Override
    public boolean drawImage(Image picture, int x, int y, int width, int height, Color ground, ImageObserver observer) {
        throw unused();
    }

    @Override
    public boolean drawImage(
            Image picture,
            int x1,
            int y1,
            int x2,
            int y2,
            int fromX1,
            int fromY1,
            int fromX2,
            int fromY2,
            ImageObserver observer) {
        throw unused();
    }

    @Override
    public boolean drawImage(
            Image picture,
            int x1,
            int y1,
            int x2,
            int y2,
            int fromX1,
            int fromY1,
            int fromX2,
            int fromY2,
            Color ground,
            ImageObserver observer) {
        throw unused();
    }
}
