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

    /** From hardly any decay, through the seams between series of several lengths and closed forms, to what is gone within minutes. */
    @ParameterizedTest
    @ValueSource(
            doubles = {0, 1e-9, 9.9e-4, 1e-3, 0.049, 0.0599, 0.0601, 0.3, 0.75, 0.999999, 1.000001, 1.2, 3, 20, 39.9, 45
            })
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

    /** Content at a share of the step by a push that is 1 at one instant, 0 at the others and follows a parabola, s. */
    private static double course(double z, int instant, double share) {
        return STEP_S * integral(s -> Math.exp(-z * (share - s)) * Parabola.at(instant, s), share);
    }

    /** A fitted parabola has the integrals of the course, times 1, s and s squared. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 1e-3, 0.0599, 0.3, 0.999999, 1.000001, 1.2, 3, 20, 39.9, 45})
    void parabolasAreFittedByTheirIntegrals(double z) {
        Decays decays = over(z);
        for (int power = 0; power <= 2; power++) {
            int p = power;
            double left = integral(s -> Math.pow(s, p) * Math.exp(-z * s), 1);
            assertEquals(left, integral(s -> Math.pow(s, p) * at(decays.fittedLeft, s), 1), WITHIN);
            double lasting = 0;
            for (int j = 0; j < Parabola.INSTANTS; j++) {
                int instant = j;
                double[][] by = {decays.fittedBy[0][j], decays.fittedBy[1][j], decays.fittedBy[2][j]};
                double expected = integral(s -> Math.pow(s, p) * course(z, instant, s), 1);
                lasting += expected;
                assertEquals(
                        expected,
                        integral(s -> Math.pow(s, p) * at(by, s), 1),
                        WITHIN * STEP_S,
                        "power " + p + " by " + j);
            }
            assertEquals(lasting, integral(s -> Math.pow(s, p) * at(decays.fittedByLasting, s), 1), WITHIN * STEP_S);
        }
    }

    private static double at(double[][] instants, double share) {
        double value = 0;
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            value += Parabola.at(m, share) * instants[m][0];
        }
        return value;
    }

    /** Legendre's third polynomial, in which no parabola takes part. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 3, 20})
    void whatNoParabolaFollowsIsPassedOnToTheEnd(double z) {
        double expected = STEP_S * integral(s -> Math.exp(-z * (1 - s)) * (((20 * s - 30) * s + 12) * s - 1), 1);
        assertEquals(expected, over(z).byRest[0], WITHIN * STEP_S);
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
