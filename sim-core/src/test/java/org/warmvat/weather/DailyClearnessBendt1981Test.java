package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The distribution of Bendt, Collares-Pereira and Rabl (1981) with Herzog's (1985) exponent: exponents and means recomputed
 * independently from the formulas as remembered; no printed table was at hand.
 */
class DailyClearnessBendt1981Test {
    @Test
    void exponentsAndMeans() {
        check(0.3, -2.100, 0.3008);
        check(0.4, 0.182, 0.3998);
        check(0.5, 2.314, 0.5016);
        check(0.6, 4.575, 0.5987);
        check(0.7, 8.517, 0.7019);
    }

    private static void check(double monthly, double gamma, double mean) {
        DailyClearness spread = new DailyClearness(monthly);
        assertEquals(gamma, spread.gamma(), 1e-3);
        assertEquals(mean, spread.mean(), 1e-4);
    }

    @Test
    void quantilesRunFromTheDarkestToTheClearestDayWithTheMean() {
        for (double monthly = 0.15; monthly < 0.75; monthly += 0.05) {
            DailyClearness spread = new DailyClearness(monthly);
            double sum = 0;
            double before = 0;
            for (int i = 0; i < 10_000; i++) {
                double k = spread.quantile((i + 0.5) / 10_000);
                assertTrue(k > before);
                before = k;
                sum += k;
            }
            assertEquals(DailyClearness.LEAST, spread.quantile(0), 1e-12);
            assertEquals(spread.most(), spread.quantile(1), 1e-9);
            assertEquals(spread.mean(), sum / 10_000, 1e-5);
        }
    }
}
