package org.warmvat.cli.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A picture as SVG (W3C Recommendation, version 1.1), written while it is drawn. Lengths are given to a tenth of a unit; text is
 * in the viewer's plain font without serifs.
 */
final class Svg {

    private static final int OPAQUE = 255;
    private static final int TENTHS = SvgPath.TENTHS;
    private static final int FINE = 10_000;
    private static final List<String> CAPS = List.of("butt", "round", "square");
    private static final List<String> JOINS = List.of("miter", "round", "bevel");

    private final Rectangle2D whole;
    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Map<String, Integer> clips = new HashMap<>();
    private String clip = "";
    private String openClip = "";

    /** An empty picture. */
    Svg(int width, int height) {
        this.whole = new Rectangle2D.Double(0, 0, width, height);
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"");
        attribute("width", width, TENTHS);
        attribute("height", height, TENTHS);
        attribute("viewBox", "0 0 " + width + " " + height);
        attribute("fill", "none");
        attribute("font-family", "sans-serif");
        attribute("text-rendering", "geometricPrecision");
        attribute("xml:space", "preserve");
        out.append(">\n");
    }

    /** What is drawn from now on shows inside a shape only, or everywhere. */
    void clip(Optional<Shape> inside) {
        StringBuilder path = new StringBuilder();
        inside.filter(shape -> !shape.contains(whole)).ifPresent(shape -> SvgPath.add(path, shape));
        clip = path.toString();
    }

    /** Fills a shape. */
    void fill(Shape shape, Color colour) {
        path(shape);
        if (shape.getPathIterator(null).getWindingRule() == PathIterator.WIND_EVEN_ODD) {
            attribute("fill-rule", "evenodd");
        }
        paint("fill", colour);
        out.append("/>\n");
    }

    /** Draws the outline of a shape. */
    void stroke(Shape shape, Color colour, BasicStroke stroke) {
        path(shape);
        paint("stroke", colour);
        attribute("stroke-width", stroke.getLineWidth(), TENTHS);
        attribute("stroke-linecap", CAPS.get(stroke.getEndCap()));
        attribute("stroke-linejoin", JOINS.get(stroke.getLineJoin()));
        attribute("stroke-miterlimit", stroke.getMiterLimit(), TENTHS);
        dashes(stroke);
        out.append("/>\n");
    }

    private void dashes(BasicStroke stroke) {
        float[] dashes = stroke.getDashArray();
        if (dashes == null) {
            return;
        }
        out.append(" stroke-dasharray=\"");
        for (int i = 0; i < dashes.length; i++) {
            SvgPath.number(i == 0 ? out : out.append(' '), dashes[i], TENTHS);
        }
        out.append('"');
        attribute("stroke-dashoffset", stroke.getDashPhase(), TENTHS);
    }

    /**
     * Writes text.
     *
     * @param text the text
     * @param left where it begins
     * @param line the line it stands on
     * @param placing turns and moves it to its place in the picture
     * @param font its size and weight
     * @param colour its colour
     */
    void text(String text, double left, double line, AffineTransform placing, Font font, Color colour) {
        within();
        out.append("<text");
        if (!placing.isIdentity()) {
            transform(placing);
        }
        attribute("x", left, TENTHS);
        attribute("y", line, TENTHS);
        attribute("font-size", font.getSize2D(), TENTHS);
        attribute("font-weight", font.isBold() ? "bold" : "normal");
        attribute("font-style", font.isItalic() ? "italic" : "normal");
        paint("fill", colour);
        out.append('>');
        words(text);
        out.append("</text>\n");
    }

    private void transform(AffineTransform placing) {
        double[] matrix = new double[6];
        placing.getMatrix(matrix);
        out.append(" transform=\"matrix(");
        SvgPath.numbers(out, matrix, FINE);
        out.append(")\"");
    }

    private void words(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> out.append(Character.isISOControl(letter) ? ' ' : letter);
            }
        }
    }

    private void path(Shape shape) {
        within();
        out.append("<path d=\"");
        SvgPath.add(out, shape);
        out.append('"');
    }

    private void paint(String what, Color colour) {
        out.append(' ').append(what).append("=\"#");
        for (int shift = 20; shift >= 0; shift -= 4) {
            out.append(Character.forDigit(colour.getRGB() >> shift & 0xF, 16));
        }
        out.append('"');
        if (colour.getAlpha() != OPAQUE) {
            attribute(what + "-opacity", colour.getAlpha() / (double) OPAQUE, FINE);
        }
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(value).append('"');
    }

    private void attribute(String name, double value, int parts) {
        out.append(' ').append(name).append("=\"");
        SvgPath.number(out, value, parts);
        out.append('"');
    }

    /** Ends the group inside the last shape and begins one inside the shape that holds now. */
    private void within() {
        if (clip.equals(openClip)) {
            return;
        }
        endClip();
        if (!clip.isEmpty()) {
            int known = clips.size();
            int number = clips.computeIfAbsent(clip, path -> known);
            if (number == known) {
                out.append("<clipPath id=\"clip" + number + "\"><path d=\"" + clip + "\"/></clipPath>\n");
            }
            out.append("<g clip-path=\"url(#clip" + number + ")\">\n");
        }
        openClip = clip;
    }

    private void endClip() {
        if (!openClip.isEmpty()) {
            out.append("</g>\n");
        }
        openClip = "";
    }

    /** The finished picture, UTF-8; nothing can be drawn after. */
    byte[] bytes() {
        endClip();
        return out.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
    }
}
