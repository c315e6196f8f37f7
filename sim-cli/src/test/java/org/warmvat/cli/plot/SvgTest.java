package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Exact: every line of what is written. */
class SvgTest {

    private static final Shape BOX = new Rectangle2D.Double(1, 2, 30, 4);
    private static final String BOX_PATH = "M1 2L31 2 31 6 1 6 1 2Z";
    private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 15);

    private final Svg svg = new Svg(100, 50);

    private List<String> written() {
        List<String> lines =
                new String(svg.bytes(), StandardCharsets.UTF_8).lines().toList();
        assertEquals("<?xml version=\"1.0\" encoding=\"UTF-8\"?>", lines.get(0));
        assertEquals(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100\" height=\"50\" viewBox=\"0 0 100 50\" fill=\"none\""
                        + " font-family=\"sans-serif\" text-rendering=\"geometricPrecision\" xml:space=\"preserve\">",
                lines.get(1));
        assertEquals("</svg>", lines.get(lines.size() - 1));
        return lines.subList(2, lines.size() - 1);
    }

    @Test
    void anEmptyPictureHasAFrameOnly() {
        assertEquals(List.of(), written());
    }

    @Test
    void areasCarryColourAndCover() {
        svg.fill(BOX, new Color(0x0A, 0xBC, 0xDE));
        svg.fill(BOX, new Color(255, 0, 0, 51));
        assertEquals(
                List.of(
                        "<path d=\"" + BOX_PATH + "\" fill=\"#0abcde\"/>",
                        "<path d=\"" + BOX_PATH + "\" fill=\"#ff0000\" fill-opacity=\"0.2\"/>"),
                written());
    }

    @Test
    void anAreaFilledByTurnsSaysSo() {
        Path2D ring = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        ring.append(BOX, false);
        svg.fill(ring, Color.BLACK);
        assertEquals(List.of("<path d=\"" + BOX_PATH + "\" fill-rule=\"evenodd\" fill=\"#000000\"/>"), written());
    }

    @Test
    void linesCarryAllThatMakesAStroke() {
        svg.stroke(
                new Line2D.Double(0, 1, 2, 3),
                Color.WHITE,
                new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {9, 2.5f}, 0.5f));
        svg.stroke(new Line2D.Double(0, 1, 2, 3), Color.WHITE, new BasicStroke(2));
        assertEquals(
                List.of(
                        "<path d=\"M0 1L2 3\" stroke=\"#ffffff\" stroke-width=\"1.4\" stroke-linecap=\"butt\""
                                + " stroke-linejoin=\"round\" stroke-miterlimit=\"1\" stroke-dasharray=\"9 2.5\""
                                + " stroke-dashoffset=\"0.5\"/>",
                        "<path d=\"M0 1L2 3\" stroke=\"#ffffff\" stroke-width=\"2\" stroke-linecap=\"square\""
                                + " stroke-linejoin=\"miter\" stroke-miterlimit=\"10\"/>"),
                written());
    }

    @Test
    void pathsRepeatNoLetterButThatOfANewPlace() {
        Path2D path = new Path2D.Double();
        path.moveTo(-0.04, -0.06);
        path.closePath();
        path.moveTo(1, 1);
        path.lineTo(2.25, -3.449);
        path.lineTo(1e6, 0.95);
        path.quadTo(1, 2, 3, 4);
        path.curveTo(1, 2, 3, 4, 5, 6);
        path.closePath();
        svg.fill(path, Color.BLACK);
        assertEquals(
                List.of("<path d=\"M0 -0.1ZM1 1L2.3 -3.4 1000000 1Q1 2 3 4C1 2 3 4 5 6Z\" fill=\"#000000\"/>"),
                written());
    }

    @Test
    void textStandsWhereItIsPutAndIsEscaped() {
        svg.text("a < b & c > d\u0007", 3, 4.55, new AffineTransform(), PLAIN, Color.BLACK);
        assertEquals(
                List.of("<text x=\"3\" y=\"4.6\" font-size=\"15\" font-weight=\"normal\" font-style=\"normal\""
                        + " fill=\"#000000\">a &lt; b &amp; c &gt; d </text>"),
                written());
    }

    @Test
    void turnedTextCarriesItsTurn() {
        AffineTransform upright = AffineTransform.getQuadrantRotateInstance(3, 20, 40);
        svg.text("°C", 3, 4, upright, PLAIN.deriveFont(Font.BOLD | Font.ITALIC, 12.5f), Color.BLACK);
        assertEquals(
                List.of(
                        "<text transform=\"matrix(0 -1 1 0 -20 60)\" x=\"3\" y=\"4\" font-size=\"12.5\" font-weight=\"bold\""
                                + " font-style=\"italic\" fill=\"#000000\">°C</text>"),
                written());
    }

    @Test
    void clipsAreWrittenOnceAndOnlyWhereSomethingIsDrawn() {
        svg.clip(Optional.of(new Rectangle2D.Double(0, 0, 100, 50)));
        svg.fill(BOX, Color.BLACK);
        svg.clip(Optional.of(BOX));
        svg.fill(BOX, Color.RED);
        svg.clip(Optional.of(new Ellipse2D.Double(0, 0, 1, 1)));
        svg.clip(Optional.empty());
        svg.fill(BOX, Color.GREEN);
        svg.clip(Optional.of(BOX));
        svg.fill(BOX, Color.BLUE);
        String box = "<path d=\"" + BOX_PATH + "\"";
        assertEquals(
                List.of(
                        box + " fill=\"#000000\"/>",
                        "<clipPath id=\"clip0\">" + box + "/></clipPath>",
                        "<g clip-path=\"url(#clip0)\">",
                        box + " fill=\"#ff0000\"/>",
                        "</g>",
                        box + " fill=\"#00ff00\"/>",
                        "<g clip-path=\"url(#clip0)\">",
                        box + " fill=\"#0000ff\"/>",
                        "</g>"),
                written());
    }
}
