package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The fast engine's coefficients against the conditions that make the method what it claims to be. */
class TableauTest {
    private static final int STAGES = Tableau.STAGES;
    /** Sums of a handful of doubles near 1; the lower weights are rounded fractions of thirteen digits. */
    private static final double ROUNDING = 1e-12;

    private static double a(int stage, int earlier) {
        if (stage == earlier) {
            return stage == 0 ? 0 : Tableau.GAMMA;
        }
        return earlier < stage ? Tableau.A[stage][earlier] : 0;
    }

    private static double weighted(double[] b, double[] values) {
        double sum = 0;
        for (int i = 0; i < STAGES; i++) {
            sum += b[i] * values[i];
        }
        return sum;
    }

    private static double[] times(double[] values) {
        double[] product = new double[STAGES];
        for (int i = 0; i < STAGES; i++) {
            for (int j = 0; j < STAGES; j++) {
                product[i] += a(i, j) * values[j];
            }
        }
        return product;
    }

    private static final double[] ONES = {1, 1, 1, 1};

    @Test
    void gammaIsTheRootThatMakesItLStable() {
        double g = Tableau.GAMMA;
        assertEquals(0, g * g * g - 3 * g * g + 1.5 * g - 1.0 / 6, 1e-15);
    }

    @Test
    void rowsSumToTheStagesTimes() {
        assertArrayEquals(Tableau.C, times(ONES), ROUNDING);
    }

    @Test
    void theStepIsOfOrderThree() {
        double[] c = Tableau.C;
        double[] squares = {c[0] * c[0], c[1] * c[1], c[2] * c[2], c[3] * c[3]};
        assertEquals(1, weighted(Tableau.B, ONES), ROUNDING);
        assertEquals(1.0 / 2, weighted(Tableau.B, c), ROUNDING);
        assertEquals(1.0 / 3, weighted(Tableau.B, squares), ROUNDING);
        assertEquals(1.0 / 6, weighted(Tableau.B, times(c)), ROUNDING);
    }

    /** Every implicit stage is itself of order 2: {@code sum a_ij c_j = c_i^2/2}. */
    @Test
    void theStagesAreOfOrderTwoButTheLast() {
        double[] ac = times(Tableau.C);
        assertEquals(Tableau.C[1] * Tableau.C[1] / 2, ac[1], ROUNDING);
        assertEquals(Tableau.C[2] * Tableau.C[2] / 2, ac[2], ROUNDING);
        assertEquals(1.0 / 2, ac[3], ROUNDING);
    }

    @Test
    void theLowerStepIsOfOrderTwoAndNotThree() {
        double[] c = Tableau.C;
        double[] squares = {c[0] * c[0], c[1] * c[1], c[2] * c[2], c[3] * c[3]};
        assertEquals(1, weighted(Tableau.B_LOWER, ONES), ROUNDING);
        assertEquals(1.0 / 2, weighted(Tableau.B_LOWER, c), ROUNDING);
        assertTrue(Math.abs(weighted(Tableau.B_LOWER, squares) - 1.0 / 3) > 1e-3);
    }

    @Test
    void theLastStageIsTheStep() {
        for (int j = 0; j < STAGES; j++) {
            assertEquals(Tableau.B[j], a(STAGES - 1, j), ROUNDING);
        }
    }

    /** The amplification of {@code y' = z y}: 1 at 0, never above 1 for negative z, gone where z is far below 0. */
    @Test
    void dampsEveryDecayAndForgetsTheFastest() {
        assertEquals(1, amplification(0), ROUNDING);
        for (double z = -1e-3; z > -1e6; z *= 1.7) {
            assertTrue(Math.abs(amplification(z)) <= 1, "z " + z);
        }
        // gamma is stated to fifteen digits, which leaves its last digit times z
        assertEquals(0, amplification(-1e9), 1e-6);
        // order 3: the first term that differs from exp(z) is z^4/24 or so
        assertEquals(Math.exp(-0.01), amplification(-0.01), 1e-8);
    }

    private static double amplification(double z) {
        double[] k = new double[STAGES];
        for (int i = 0; i < STAGES; i++) {
            double y = 1;
            for (int j = 0; j < i; j++) {
                y += z * a(i, j) * k[j];
            }
            k[i] = y / (1 - z * a(i, i));
        }
        return 1 + z * weighted(Tableau.B, k);
    }
}
