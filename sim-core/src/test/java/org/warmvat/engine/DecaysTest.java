package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a mode becomes over a step, against the integrals it stands for by the quadrature of Commons Math, and against a
 * parabola that is pushed through a decay by hand.
 */
class DecaysTest {
    private static final double STEP_S = 3600;
    /** Of the quadrature, whose integrand is smooth. */
    private static final double WITHIN = 1e-10;

    private static double integral(UnivariateFunction function, double to) {
        return new IterativeLegendreGaussIntegrator(8, 1e-13, 1e-13).integrate(1_000_000, function, 0, to);
    }

    private static Decays over(double decayTimesStep) {
        Decays decays = new Decays(new double[] {decayTimesStep / STEP_S}, new double[Decays.FUNCTIONS][1]);
        decays.set(STEP_S);
        return decays;
    }

    /** From hardly any decay, through the seam between series and closed forms, to what is gone within minutes. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 1e-3, 0.3, 0.499999, 0.500001, 0.75, 1.2, 3, 20, 39.9, 45})
    void contentsAtTheInstantsAreTheIntegrals(double z) {
        Decays decays = over(z);
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            double share = Parabola.SHARE[m];
            assertEquals(Math.exp(-z * share), decays.left[m][0], 1e-15);
            for (int j = 0; j < Parabola.INSTANTS; j++) {
                int instant = j;
                double expected = STEP_S * integral(s -> Math.exp(-z * (share - s)) * Parabola.at(instant, s), share);
                assertEquals(expected, decays.by[m][j][0], WITHIN * STEP_S, "instant " + m + " by " + j);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 1e-3, 0.3, 0.75, 3, 20})
    void sumsAreTheIntegralsOfTheContents(double z) {
        Decays decays = over(z);
        assertEquals(STEP_S * integral(s -> Math.exp(-z * s), 1), decays.leftS[0], WITHIN * STEP_S);
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            int instant = j;
            // what is pushed at s is there for the rest of the step, decaying
            double expected = STEP_S
                    * STEP_S
                    * integral(s -> Parabola.at(instant, s) * (z == 0 ? 1 - s : -Math.expm1(-z * (1 - s)) / z), 1);
            assertEquals(expected, decays.sumBy[j][0], WITHIN * STEP_S * STEP_S);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 17})
    void theEndAloneIsTheSameAsTheEndOfTheWhole(double z) {
        Decays end = new Decays(new double[] {z / STEP_S}, new double[Decays.FUNCTIONS][1]);
        end.setEnd(STEP_S);
        for (int j = 0; j < Parabola.INSTANTS; j++) {
            assertEquals(over(z).by[Parabola.END][j][0], end.by[Parabola.END][j][0]);
        }
    }
}
