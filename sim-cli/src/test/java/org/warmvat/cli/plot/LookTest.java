package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Contrast by the formula of the Web Content Accessibility Guidelines 2.1 (W3C 2018), relative luminance and contrast ratio. */
class LookTest {

    private static double luminance(Color colour) {
        double[] parts = Arrays.stream(new int[] {colour.getRed(), colour.getGreen(), colour.getBlue()})
                .mapToDouble(part -> part / 255.0)
                .map(part -> part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4))
                .toArray();
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    private static double contrastToWhite(Color colour) {
        return 1.05 / (luminance(colour) + 0.05);
    }

    @Test
    void theFormulaGivesItsKnownEnds() {
        assertEquals(21, contrastToWhite(Color.BLACK), 1e-9);
        assertEquals(1, contrastToWhite(Color.WHITE), 1e-9);
    }

    @Test
    void everyLineStandsOutFromWhite() {
        for (Look look : Look.values()) {
            assertTrue(contrastToWhite(look.line()) >= 3, look + " " + contrastToWhite(look.line()));
        }
        assertTrue(contrastToWhite(Look.INK) >= 4.5);
    }

    @Test
    void neighbouringAreasDifferInLightnessOrHatching() {
        List<List<Look>> stacks = List.of(
                List.of(Look.BACKUP, Look.SUN, Look.SHAFT, Look.REACTION),
                List.of(
                        Look.FIRST,
                        Look.SECOND,
                        Look.THIRD,
                        Look.FOURTH,
                        Look.FIFTH,
                        Look.SIXTH,
                        Look.SEVENTH,
                        Look.EIGHTH));
        for (List<Look> stacked : stacks) {
            for (int i = 1; i < stacked.size(); i++) {
                Look below = stacked.get(i - 1);
                Look above = stacked.get(i);
                double apart = Math.abs(Look.lightness(below.fill()) - Look.lightness(above.fill()));
                assertTrue(apart > 25 || below.hatch() != above.hatch(), below + " and " + above);
            }
        }
    }

    @Test
    void hatchingStaysInsideItsArea() {
        Rectangle2D area = new Rectangle2D.Double(10, 20, 31, 17);
        for (Hatch hatch : Hatch.values()) {
            Path2D lines = hatch.lines(area);
            double[] point = new double[6];
            for (PathIterator i = lines.getPathIterator(null); !i.isDone(); i.next()) {
                i.currentSegment(point);
                assertTrue(
                        point[0] >= 10 && point[0] <= 41 && point[1] >= 20 && point[1] <= 37,
                        hatch + " " + point[0] + " " + point[1]);
            }
        }
    }
}
