package org.warmvat.cli.plot;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.text.TextUtils;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A drawn picture. The arrays are shared, not copied: read only.
 *
 * @param drawing name, title, caption and words in place of it
 * @param svg as SVG, UTF-8, for a page
 * @param narrowSvg as SVG, UTF-8, for a telephone
 * @param png as PNG
 */
@SuppressWarnings("ArrayRecordComponent") // handed through once from drawing to writing
public record Picture(Drawing drawing, byte[] svg, byte[] narrowSvg, byte[] png) {

    private static final double PNG_SCALE = 1.5;

    static {
        // turned labels stay text in the SVG instead of becoming outlines
        TextUtils.setUseDrawRotatedStringWorkaround(false);
        ImageIO.setUseCache(false); // an image of a picture fits in memory; a file in between is only slower
    }

    /** Draws it in both forms. */
    static Picture of(Drawing drawing) {
        Drawing.Sheet wide = drawing.on(Form.WIDE);
        return new Picture(
                drawing, svg(wide, Form.WIDE), svg(drawing.on(Form.NARROW), Form.NARROW), png(wide, Form.WIDE));
    }

    private static byte[] png(Drawing.Sheet sheet, Form form) {
        BufferedImage image = new BufferedImage(
                (int) (form.widthPx() * PNG_SCALE), (int) (sheet.heightPx() * PNG_SCALE), BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        g2.scale(PNG_SCALE, PNG_SCALE);
        paint(sheet, form, g2);
        g2.dispose();
        return bytes(out -> ImageIO.write(image, "png", out));
    }

    private static SVGGraphics2D canvas(Dimension size) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setPrecision(1);
        context.setComment(null);
        SVGGraphics2D g2 = new SVGGraphics2D(context, false);
        g2.setSVGCanvasSize(size);
        return g2;
    }

    private static byte[] svg(Drawing.Sheet sheet, Form form) {
        SVGGraphics2D g2 = canvas(new Dimension(form.widthPx(), sheet.heightPx()));
        paint(sheet, form, g2);
        Element root = g2.getRoot();
        root.setAttribute("viewBox", "0 0 " + form.widthPx() + " " + sheet.heightPx());
        return bytes(out -> g2.stream(root, new OutputStreamWriter(out, StandardCharsets.UTF_8)));
    }

    private interface Content {
        void to(OutputStream out) throws IOException;
    }

    private static byte[] bytes(Content content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        try {
            content.to(out);
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

    private static void paint(Drawing.Sheet sheet, Form form, Graphics2D g2) {
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g2.setPaint(Color.WHITE);
        g2.fillRect(0, 0, form.widthPx(), sheet.heightPx());
        sheet.paint().accept(g2);
    }

    /** File name without ending. */
    public String name() {
        return drawing.name();
    }

    /** The picture as a data address, so that a page needs nothing else. */
    public String source() {
        return address(svg);
    }

    /** The same in the form for a telephone. */
    public String narrowSource() {
        return address(narrowSvg);
    }

    private static String address(byte[] svg) {
        return new String(Base64.getEncoder().encode(svg), StandardCharsets.ISO_8859_1)
                .transform(text -> "data:image/svg+xml;base64," + text);
    }
}
