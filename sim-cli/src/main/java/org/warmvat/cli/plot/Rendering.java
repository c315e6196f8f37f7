package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.text.TextUtils;

/** Turns drawings into bytes. */
final class Rendering {

    static final int WIDTH_PX = 1000;
    private static final double PNG_SCALE = 1.5;

    static {
        // turned labels stay text in the SVG instead of becoming outlines
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private Rendering() {}

    static Picture of(Drawing drawing) {
        BufferedImage image = new BufferedImage(
                (int) (WIDTH_PX * PNG_SCALE), (int) (drawing.heightPx() * PNG_SCALE), BufferedImage.TYPE_INT_RGB);
        Svg svg = new Svg(WIDTH_PX, drawing.heightPx());
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g2.scale(PNG_SCALE, PNG_SCALE);
        draw(drawing, new TwoForms(g2, PNG_SCALE, svg));
        g2.dispose();
        return new Picture(drawing.name(), drawing.title(), drawing.caption(), svg.bytes(), Png.of(image));
    }

    private static void draw(Drawing drawing, Graphics2D g2) {
        JFreeChart chart = drawing.chart();
        chart.setAntiAlias(true);
        chart.setTextAntiAlias(true);
        chart.setBackgroundPaint(Color.WHITE);
        chart.draw(g2, new Rectangle2D.Double(0, 0, WIDTH_PX, drawing.heightPx()));
    }
}
