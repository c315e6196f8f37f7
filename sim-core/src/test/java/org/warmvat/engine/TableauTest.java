package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The fast engine's coefficients against the conditions that make both methods what they claim to be. */
class TableauTest {
    /** Sums of a handful of doubles near 1; the lower weights are rounded fractions of thirteen digits. */
    private static final double ROUNDING = 1e-12;

    /** Both methods with their orders. */
    enum Method {
        THIRD(3),
        FOURTH(4);

        private final int order;

        Method(int order) {
            this.order = order;
        }

        private Tableau tableau() {
            return this == THIRD ? Tableau.THIRD_ORDER : Tableau.FOURTH_ORDER;
        }

        int stages() {
            return tableau().stages();
        }

        double a(int stage, int earlier) {
            if (stage == earlier) {
                return stage == 0 ? 0 : tableau().gamma();
            }
            return earlier < stage ? tableau().a(stage)[earlier] : 0;
        }

        double[] c() {
            double[] c = new double[stages()];
            Arrays.setAll(c, tableau()::c);
            return c;
        }

        double[] b() {
            double[] b = new double[stages()];
            Arrays.setAll(b, tableau()::b);
            return b;
        }

        double[] lower() {
            double[] lower = new double[stages()];
            Arrays.setAll(lower, i -> tableau().b(i) - tableau().error(i));
            return lower;
        }

        double[] ones() {
            double[] ones = new double[stages()];
            Arrays.fill(ones, 1);
            return ones;
        }

        double[] times(double[] values) {
            double[] product = new double[stages()];
            for (int i = 0; i < stages(); i++) {
                for (int j = 0; j < stages(); j++) {
                    product[i] += a(i, j) * values[j];
                }
            }
            return product;
        }

        double[] c(int power) {
            return Arrays.stream(c()).map(c -> Math.pow(c, power)).toArray();
        }
    }

    private static double weighted(double[] b, double[] values) {
        double sum = 0;
        for (int i = 0; i < b.length; i++) {
            sum += b[i] * values[i];
        }
        return sum;
    }

    private static double[] product(double[] one, double[] other) {
        double[] product = new double[one.length];
        Arrays.setAll(product, i -> one[i] * other[i]);
        return product;
    }

    @Test
    void gammaIsTheRootThatMakesTheThirdOrderLStable() {
        double g = Tableau.THIRD_ORDER.gamma();
        assertEquals(0, g * g * g - 3 * g * g + 1.5 * g - 1.0 / 6, 1e-15);
    }

    @ParameterizedTest
    @EnumSource
    void rowsSumToTheStagesTimes(Method method) {
        assertArrayEquals(method.c(), method.times(method.ones()), ROUNDING);
    }

    /** Conditions of Butcher's trees up to four nodes; those of the order above are not met. */
    @ParameterizedTest
    @EnumSource
    void theStepIsOfItsOrder(Method method) {
        assertEquals(method.order, order(method, method.b()));
    }

    @ParameterizedTest
    @EnumSource
    void theLowerStepIsOfOneOrderLess(Method method) {
        assertEquals(method.order - 1, order(method, method.lower()));
    }

    /** Highest order, up to 4, whose conditions some weights meet. */
    private static int order(Method method, double[] b) {
        double[] c = method.c();
        double[] ac = method.times(c);
        double[][] misses = {
            {weighted(b, method.ones()) - 1},
            {weighted(b, c) - 1.0 / 2},
            {weighted(b, method.c(2)) - 1.0 / 3, weighted(b, ac) - 1.0 / 6},
            {
                weighted(b, method.c(3)) - 1.0 / 4,
                weighted(b, product(c, ac)) - 1.0 / 8,
                weighted(b, method.times(method.c(2))) - 1.0 / 12,
                weighted(b, method.times(ac)) - 1.0 / 24
            }
        };
        int order = 0;
        while (order < misses.length && Arrays.stream(misses[order]).allMatch(miss -> Math.abs(miss) < ROUNDING)) {
            order++;
        }
        return order;
    }

    /** Every implicit stage is itself of order 2: {@code sum a_ij c_j = c_i^2/2}. */
    @ParameterizedTest
    @EnumSource
    void theStagesAreOfOrderTwo(Method method) {
        double[] halves = Arrays.stream(method.c(2)).map(square -> square / 2).toArray();
        assertArrayEquals(halves, method.times(method.c()), ROUNDING);
    }

    @ParameterizedTest
    @EnumSource
    void theLastStageIsTheStep(Method method) {
        for (int j = 0; j < method.stages(); j++) {
            assertEquals(method.b()[j], method.a(method.stages() - 1, j), ROUNDING);
        }
    }

    /** The amplification of {@code y' = z y}: 1 at 0, never above 1 for negative z, gone where z is far below 0. */
    @ParameterizedTest
    @EnumSource
    void dampsEveryDecayAndForgetsTheFastest(Method method) {
        assertEquals(1, amplification(method, 0), ROUNDING);
        for (double z = -1e-3; z > -1e6; z *= 1.7) {
            assertTrue(Math.abs(amplification(method, z)) <= 1, "z " + z);
        }
        // gamma is stated to fifteen digits, which leaves its last digit times z
        assertEquals(0, amplification(method, -1e9), 1e-6);
        // the first term that differs from exp(z) is that of the order plus 1
        assertEquals(Math.exp(-0.01), amplification(method, -0.01), 0.01 * Math.pow(0.01, method.order));
    }

    private static double amplification(Method method, double z) {
        double[] k = new double[method.stages()];
        for (int i = 0; i < method.stages(); i++) {
            double y = 1;
            for (int j = 0; j < i; j++) {
                y += z * method.a(i, j) * k[j];
            }
            k[i] = y / (1 - z * method.a(i, i));
        }
        return 1 + z * weighted(method.b(), k);
    }
}
