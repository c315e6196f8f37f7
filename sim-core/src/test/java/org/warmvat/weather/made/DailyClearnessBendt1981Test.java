package org.warmvat.weather.made;

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
        DailyClearness spread = DailyClearness.ofManyYears(monthly);
        assertEquals(gamma, spread.gamma(), 1e-3);
        assertEquals(mean, spread.mean(), 1e-4);
    }

    @Test
    void quantilesRunFromTheDarkestToTheClearestDayWithTheMean() {
        for (double monthly = 0.15; monthly < 0.75; monthly += 0.05) {
            DailyClearness spread = DailyClearness.ofManyYears(monthly);
            double sum = 0;
            double before = 0;
            for (int i = 0; i < 10_000; i++) {
                double k = spread.quantile((i + 0.5) / 10_000);
                assertTrue(k > before);
                before = k;
                sum += k;
            }
            assertEquals(DailyClearness.DARKEST_OF_MANY_YEARS, spread.quantile(0), 1e-12);
            assertEquals(spread.most(), spread.quantile(1), 1e-9);
            assertEquals(spread.mean(), sum / 10_000, 1e-5);
        }
    }

    /** The days of one month have the month's mean to rounding, and none is darker than 0.4 of it. */
    @Test
    void daysOfOneMonth() {
        for (double monthly = 0.1; monthly <= 0.75; monthly += 0.05) {
            DailyClearness spread = DailyClearness.ofOneMonth(monthly);
            assertEquals(monthly, spread.mean(), 1e-5);
            assertEquals(0.4 * monthly, spread.quantile(0), 1e-12);
            assertEquals(DailyClearness.ofManyYears(monthly).most(), spread.quantile(1), 1e-9);
        }
    }

    /** Means that no month has are taken as the nearest that the distribution was drawn from. */
    @Test
    void extremeMeans() {
        assertEquals(0.1, DailyClearness.ofOneMonth(0.02).mean(), 1e-5);
        assertEquals(0.75, DailyClearness.ofOneMonth(0.9).mean(), 1e-5);
    }
}
