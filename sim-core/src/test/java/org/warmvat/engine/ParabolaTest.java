package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The parabola of the fast engine's steps against what makes its instants those of Radau's quadrature. */
class ParabolaTest {
    /** Sums of three doubles near 1. */
    private static final double ROUNDING = 1e-14;

    private static double quadrature(int power) {
        double sum = 0;
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            sum += Parabola.WEIGHT[j] * Math.pow(Parabola.SHARE[j], power);
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void polynomialsUpToTheFourthDegreeAreIntegratedExactly(int power) {
        assertEquals(1.0 / (power + 1), quadrature(power), ROUNDING);
    }

    @Test
    void theFifthDegreeIsBeyondIt() {
        assertEquals(1.0 / 6 + 1.0 / 600, quadrature(5), ROUNDING, "the error of this quadrature is known to be 1/600");
    }

    @Test
    void eachInstantHasItsOwnValue() {
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            for (int m = 0; m < Parabola.INSTANTS; m++) {
                assertEquals(j == m ? 1 : 0, Parabola.at(j, Parabola.SHARE[m]), ROUNDING);
            }
        }
    }

    /** Any parabola comes back, between the instants and before the first. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.37, 0.8, 1})
    void aParabolaComesBack(double share) {
        double sum = 0;
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            double at = Parabola.SHARE[j];
            sum += Parabola.at(j, share) * (3 - 2 * at + 5 * at * at);
        }
        assertEquals(3 - 2 * share + 5 * share * share, sum, 10 * ROUNDING);
    }

    @Test
    void weightsUpToAShareIntegrateUpToThere() {
        double share = 0.3;
        double[] weights = Parabola.weights(share);
        double sum = 0;
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            sum += weights[j] * Parabola.SHARE[j] * Parabola.SHARE[j];
        }
        assertEquals(share * share * share / 3, sum, ROUNDING);
    }
}
