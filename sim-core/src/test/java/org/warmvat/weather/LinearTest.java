package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Exact: straight lines between stamps. */
class LinearTest {
    private final Linear line = new Linear(1800, new double[] {2, 4, 0});

    @Test
    void runsStraightAndIsHeldAtBothEnds() {
        assertEquals(2, line.at(-1e6));
        assertEquals(2, line.at(1800));
        assertEquals(3, line.at(3600));
        assertEquals(4, line.at(5400));
        assertEquals(1, line.at(8100));
        assertEquals(0, line.at(1e9));
    }

    @Test
    void meansAreThoseOfTheLines() {
        assertEquals(3, line.mean(1800, 5400));
        assertEquals(2.5, line.mean(1800, 9000), 1e-12);
        assertEquals(3.5, line.mean(3600, 5400));
        assertEquals((1800 * 2 + 3600 * 3 + 3600 * 2) / 9000.0, line.mean(0, 9000), 1e-12);
        assertEquals(2, line.mean(-7200, -3600));
        assertEquals(0, line.mean(10_000, 20_000));
    }

    @Test
    void aMeanOverManySmallSpansAddsUp() {
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            sum += line.mean(11.3 * i, 11.3 * (i + 1)) * 11.3;
        }
        assertEquals(line.mean(0, 11_300), sum / 11_300, 1e-12);
    }

    @Test
    void refusesHoles() {
        assertThrows(IllegalArgumentException.class, () -> new Linear(0, new double[0]));
        assertThrows(IllegalArgumentException.class, () -> new Linear(0, new double[] {1, Double.NaN}));
        assertThrows(IllegalArgumentException.class, () -> line.mean(5, 5));
    }

    @Test
    void keepsItsOwnCopy() {
        double[] values = {1, 2};
        Linear own = new Linear(0, values);
        values[0] = 99;
        assertEquals(1, own.value(0));
        assertEquals(2, own.size());
        assertEquals(1.5, own.mean());
    }
}
