package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
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
    }

    private Rendering() {}

    static Picture of(Drawing drawing) {
        try {
            return new Picture(drawing.name(), drawing.title(), drawing.caption(), svg(drawing), png(drawing));
        } catch (IOException | ParserConfigurationException impossible) {
            throw new IllegalStateException("drawing into memory failed", impossible);
        }
    }

    private static byte[] png(Drawing drawing) {
        BufferedImage image = new BufferedImage(
                (int) (WIDTH_PX * PNG_SCALE), (int) (drawing.heightPx() * PNG_SCALE), BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g2.scale(PNG_SCALE, PNG_SCALE);
        draw(drawing, g2);
        g2.dispose();
        return Png.of(image);
    }

    private static byte[] svg(Drawing drawing) throws IOException, ParserConfigurationException {
        Document document = DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setPrecision(1);
        context.setComment("Warmvat");
        context.setGraphicContextDefaults(defaults());
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(new Dimension(WIDTH_PX, drawing.heightPx()));
        draw(drawing, g2);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Writer out = new OutputStreamWriter(bytes, StandardCharsets.UTF_8)) {
            Element root = g2.getRoot();
            root.setAttributeNS(null, "viewBox", "0 0 " + WIDTH_PX + " " + drawing.heightPx());
            g2.stream(root, out, true, false);
        }
        return bytes.toByteArray();
    }

    /** The font that text has unless it says otherwise; the library's own misspells its name, and Java then opens every font there is. */
    private static SVGGeneratorContext.GraphicContextDefaults defaults() {
        SVGGeneratorContext.GraphicContextDefaults defaults = new SVGGeneratorContext.GraphicContextDefaults();
        defaults.setFont(new Font(Font.DIALOG, Font.PLAIN, 12));
        return defaults;
    }

    private static void draw(Drawing drawing, Graphics2D g2) {
        JFreeChart chart = drawing.chart();
        chart.setAntiAlias(true);
        chart.setTextAntiAlias(true);
        chart.setBackgroundPaint(Color.WHITE);
        chart.draw(g2, new Rectangle2D.Double(0, 0, WIDTH_PX, drawing.heightPx()));
    }
}
