package org.warmvat.cli.plot;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Turns drawings into bytes. */
final class Rendering {

    static final int WIDTH_PX = 1000;
    private static final double PNG_SCALE = 1.5;

    static {
        // turned labels stay text in the SVG instead of becoming outlines
        TextUtils.setUseDrawRotatedStringWorkaround(false);
        ImageIO.setUseCache(false); // an image of a picture fits in memory; a file in between is only slower
    }

    private Rendering() {}

    static Picture of(Drawing drawing) {
        return new Picture(drawing.name(), drawing.title(), drawing.caption(), svg(drawing), png(drawing));
    }

    private static byte[] png(Drawing drawing) {
        BufferedImage image = drawing.chart()
                .createBufferedImage(
                        (int) (WIDTH_PX * PNG_SCALE),
                        (int) (drawing.heightPx() * PNG_SCALE),
                        WIDTH_PX,
                        drawing.heightPx(),
                        null);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static byte[] svg(Drawing drawing) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setPrecision(1);
        context.setComment(null);
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(new Dimension(WIDTH_PX, drawing.heightPx()));
        draw(drawing, g2);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
        Element root = g2.getRoot();
        root.setAttribute("viewBox", "0 0 " + WIDTH_PX + " " + drawing.heightPx());
        try {
            g2.stream(root, new OutputStreamWriter(out, StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument("http://www.w3.org/2000/svg", "svg", null);
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void draw(Drawing drawing, Graphics2D g2) {
        JFreeChart chart = drawing.chart();
        chart.draw(g2, new Rectangle2D.Double(0, 0, WIDTH_PX, drawing.heightPx()));
    }
}
