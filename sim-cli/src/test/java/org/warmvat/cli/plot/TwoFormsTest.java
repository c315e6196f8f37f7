package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Exact: the same dots as without it, and lengths in units of the picture. */
class TwoFormsTest {

    private static final double SCALE = 1.5;

    private final BufferedImage image = new BufferedImage(90, 60, BufferedImage.TYPE_INT_RGB);
    private final Svg svg = new Svg(60, 40);
    private final TwoForms surface = new TwoForms(scaled(image), SCALE, svg);

    private static Graphics2D scaled(BufferedImage image) {
        Graphics2D g2 = image.createGraphics();
        g2.scale(SCALE, SCALE);
        return g2;
    }

    private List<String> written() {
        List<String> lines =
                new String(svg.bytes(), StandardCharsets.UTF_8).lines().toList();
        return lines.subList(2, lines.size() - 1);
    }

    @Test
    void theImageGetsTheSameDotsAsByItself() {
        Consumer<Graphics2D> scene = g2 -> {
            g2.setPaint(Color.ORANGE);
            g2.translate(5, 3);
            g2.clip(new Rectangle(0, 0, 40, 20));
            g2.fill(new Rectangle2D.Double(1, 2, 60, 9));
            g2.setStroke(new BasicStroke(2));
            g2.rotate(0.3, 10, 10);
            g2.draw(new Rectangle(4, 4, 20, 8));
            g2.drawString("°C", 3, 15);
        };
        BufferedImage alone = new BufferedImage(90, 60, BufferedImage.TYPE_INT_RGB);
        scene.accept(scaled(alone));
        scene.accept(surface);
        assertArrayEquals(pixels(alone), pixels(image));
        assertTrue(Arrays.stream(pixels(image)).distinct().count() > 1, "nothing was drawn");
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @Test
    void theSvgIsInUnitsOfThePictureNotInDots() {
        surface.setPaint(Color.RED);
        surface.translate(5, 3);
        surface.setClip(1, 2, 10, 10);
        surface.fill(new Rectangle(1, 2, 30, 4));
        surface.drawString("a", 4, 5);
        assertEquals(
                List.of(
                        "<clipPath id=\"clip0\"><path d=\"M6 5L16 5 16 15 6 15 6 5Z\"/></clipPath>",
                        "<g clip-path=\"url(#clip0)\">",
                        "<path d=\"M6 5L36 5 36 9 6 9 6 5Z\" fill=\"#ff0000\"/>",
                        "<text transform=\"matrix(1 0 0 1 5 3)\" x=\"4\" y=\"5\" font-size=\"12\" font-weight=\"normal\""
                                + " font-style=\"normal\" fill=\"#ff0000\">a</text>",
                        "</g>"),
                written());
    }

    @Test
    void everyWayOfClippingCounts() {
        surface.setPaint(Color.RED);
        List<Runnable> ways = List.of(
                () -> surface.clip(new Rectangle(0, 0, 4, 4)),
                () -> surface.clipRect(0, 0, 3, 4),
                () -> surface.setClip(0, 0, 2, 4),
                () -> surface.setClip(new Rectangle(0, 0, 1, 4)));
        for (Runnable way : ways) {
            way.run();
            surface.fill(new Rectangle(9, 9));
        }
        surface.setClip(null);
        surface.fill(new Rectangle(9, 9));
        List<String> lines = written();
        for (int way = 0; way < ways.size(); way++) {
            int right = 4 - way;
            assertEquals(
                    "<clipPath id=\"clip" + way + "\"><path d=\"M0 0L" + right + " 0 " + right
                            + " 4 0 4 0 0Z\"/></clipPath>",
                    lines.get(4 * way));
        }
        assertEquals("<path d=\"M0 0L9 0 9 9 0 9 0 0Z\" fill=\"#ff0000\"/>", lines.get(16));
        assertEquals(17, lines.size());
    }

    @Test
    void aThinnerCoatBecomesCover() {
        surface.setPaint(new Color(0, 0, 0, 102));
        surface.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 0.5f));
        surface.draw(new Rectangle(2, 1));
        assertEquals(
                List.of("<path d=\"M0 0L2 0 2 1 0 1 0 0Z\" stroke=\"#000000\" stroke-opacity=\"0.2\" stroke-width=\"1\""
                        + " stroke-linecap=\"square\" stroke-linejoin=\"miter\" stroke-miterlimit=\"10\"/>"),
                written());
    }

    @Test
    void whatChartsDoNotDrawIsRefusedNotLost() {
        List<Runnable> others = List.of(
                () -> surface.drawLine(1, 2, 3, 4),
                () -> surface.fillOval(1, 2, 3, 4),
                () -> surface.drawImage(image, 0, 0, null),
                surface::create);
        for (Runnable other : others) {
            assertEquals(
                    "charts are drawn by shapes and plain text only",
                    assertThrows(UnsupportedOperationException.class, other::run)
                            .getMessage());
        }
        assertEquals(List.of(), written());
    }
}
