package org.warmvat.weather.made;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Hourly clearness after Aguiar and Collares-Pereira (1992): values for a daily clearness of 0.5 and a sun 45 degrees up,
 * recomputed independently from a public transcription.
 */
class HourlyClearnessAguiar1992Test {
    private static final double SIN_45 = Math.sqrt(0.5);

    @Test
    void meanAtHalfClearness() {
        assertEquals(0.5452, HourlyClearness.mean(0.5, SIN_45), 5e-5);
    }

    /** Our own spread: most on broken days, nearly none on the darkest and clearest; symmetric about 0.5 by its formula. */
    @Test
    void brokenDaysVaryMost() {
        assertEquals(0.16, HourlyClearness.deviation(0.5), 1e-12);
        assertEquals(HourlyClearness.deviation(0.3), HourlyClearness.deviation(0.7), 1e-12);
        assertEquals(0.16 * Math.pow(0.5, 0.75), HourlyClearness.deviation(0.3), 1e-12);
        assertEquals(0.02, HourlyClearness.deviation(0.05));
        assertEquals(0.02, HourlyClearness.deviation(0.95));
    }

    /** Weighted over an equinox day at 45 N the hours return the day within a few hundredths; days are scaled anyway. */
    @Test
    void equinoxDay() {
        check(0.20, 0.188);
        check(0.35, 0.358);
        check(0.50, 0.512);
        check(0.65, 0.658);
        check(0.75, 0.751);
    }

    private static void check(double day, double weighted) {
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < 12; i++) {
            double sine = SIN_45 * Math.cos(Math.PI * (i - 5.5) / 12);
            sum += sine * HourlyClearness.mean(day, sine);
            weight += sine;
        }
        assertEquals(weighted, sum / weight, 2e-3);
    }

    @Test
    void theClearLimitIsHighestAtNoon() {
        assertEquals(0.88, HourlyClearness.clearLimit(12));
        assertEquals(0.88 * Math.cos(Math.PI / 5), HourlyClearness.clearLimit(18), 1e-12);
    }
}
