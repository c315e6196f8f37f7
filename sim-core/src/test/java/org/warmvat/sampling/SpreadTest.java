package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Exact: quantiles, moments of a sum of independent inputs, and how often a stated error holds the truth. */
class SpreadTest {

    @Test
    void lowAndHighAreTheFiveAndNinetyFivePerCentPoints() {
        Spread spread = new Spread(2, 6, Spread.Shape.NORMAL);
        assertEquals(2, spread.quantile(0.05), 1e-9);
        assertEquals(4, spread.quantile(0.5), 1e-9);
        assertEquals(6, spread.quantile(0.95), 1e-9);
        assertEquals(2.4, new Spread(2, 6, Spread.Shape.EVEN).quantile(0.1), 1e-12);
        assertEquals(
                "low 6.0, expected a number below high 2.0",
                assertThrows(IllegalArgumentException.class, () -> new Spread(6, 2, Spread.Shape.EVEN))
                        .getMessage());
    }

    /** Against an independent library: SciPy, version and call in the file; ours is found by its library to about 1e-8. */
    @Test
    void theQuantilesOfTheBellAreAsTabulated() {
        Spread standard = new Spread(-1.6448536269514722, 1.6448536269514722, Spread.Shape.NORMAL);
        for (double[] row : ReferenceTable.read("normal-quantiles.csv").rows()) {
            assertEquals(row[1], standard.quantile(row[0]), 2e-8, "at " + row[0]);
        }
    }

    /** Mean and variance of 3 x + 2 y with x normal and y even are known; the drawn ones come as near as such points do. */
    @Test
    void aLinearToyHasItsExactMeanAndVariance() {
        Spread x = new Spread(-1.6448536269514722, 1.6448536269514722, Spread.Shape.NORMAL);
        Spread y = new Spread(0, 12, Spread.Shape.EVEN);
        double[][] points = new ShiftedSobol(2, 1).points(0, 8192);
        double sum = 0;
        double squares = 0;
        for (double[] point : points) {
            double value = 3 * x.quantile(point[0]) + 2 * y.quantile(point[1]);
            sum += value;
            squares += value * value;
        }
        double mean = sum / points.length;
        assertEquals(12, mean, 0.01);
        assertEquals(9 + 4 * 12, squares / points.length - mean * mean, 0.1);
    }

    /** A coin of known chance, tossed 200 times, over and over: the truth lies within two errors about 95 times in 100. */
    @Test
    void theErrorOfAShareHoldsTheTruth() {
        Well19937c random = new Well19937c(5);
        for (double chance : new double[] {0.03, 0.3, 0.9}) {
            int held = 0;
            for (int trial = 0; trial < 1000; trial++) {
                int heads = 0;
                for (int toss = 0; toss < 200; toss++) {
                    heads += random.nextDouble() < chance ? 1 : 0;
                }
                Share share = Share.of(heads, 200);
                held += Math.abs(share.value() - chance) <= 1.96 * share.error() ? 1 : 0;
            }
            assertTrue(held >= 930 && held <= 990, chance + " held in " + held + " of 1000");
        }
    }

    @Test
    void noneOfNoneIsNotCertain() {
        assertEquals(0, Share.of(0, 100).value());
        assertEquals(0.0135, Share.of(0, 100).error(), 5e-5);
        assertThrows(IllegalArgumentException.class, () -> Share.of(0, 0));
        assertThrows(IllegalArgumentException.class, () -> Share.of(3, 2));
    }
}
