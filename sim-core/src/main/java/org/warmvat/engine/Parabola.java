package org.warmvat.engine;

/**
 * The parabola through values at three instants of a step, those of Radau's quadrature: integrals of polynomials up to the fourth
 * degree come out right, and the end is one of them (Hairer and Wanner, Solving Ordinary Differential Equations II, section IV.5).
 *
 * <p>A parabola is fitted to a course by giving it the same integrals, also those times s and s squared (projection on Legendre's
 * polynomials): what a jump stirs up for a minute then counts with its heat, neither passed over nor drawn out.
 */
final class Parabola {

    static final int INSTANTS = 3;

    /** Index of the last instant, which is the end. */
    static final int END = 2;

    /** The instants as shares of the step. */
    static final double[] SHARE = {(4 - Math.sqrt(6)) / 10, (4 + Math.sqrt(6)) / 10, 1};

    /** Coefficients, by power of the share, of the parabola that is 1 at one instant and 0 at the others. */
    static final double[][] COEFFICIENT = coefficients();

    /** Weight of each instant in the integral over the step. */
    static final double[] WEIGHT = weights(1);

    /** Weights, by instant, of a course's integrals times 1, s and s squared in the parabola fitted to it. */
    static final double[][] FITTED = {fitted(SHARE[0]), fitted(SHARE[1]), fitted(SHARE[2])};

    private Parabola() {}

    private static double[] fitted(double share) {
        double first = 2 * share - 1;
        double second = 6 * share * share - 6 * share + 1;
        return new double[] {1 - 3 * first + 5 * second, 6 * first - 30 * second, 30 * second};
    }

    private static double[][] coefficients() {
        double[][] coefficients = new double[INSTANTS][];
        for (int j = 0; j < INSTANTS; j++) {
            double a = SHARE[(j + 1) % INSTANTS];
            double b = SHARE[(j + 2) % INSTANTS];
            double norm = (SHARE[j] - a) * (SHARE[j] - b);
            coefficients[j] = new double[] {a * b / norm, -(a + b) / norm, 1 / norm};
        }
        return coefficients;
    }

    /** Weight of each instant in the integral from the beginning to a share of the step, in units of the step. */
    static double[] weights(double share) {
        double[] weights = new double[INSTANTS];
        for (int j = 0; j < INSTANTS; j++) {
            double[] c = COEFFICIENT[j];
            weights[j] = share * (c[0] + share * (c[1] / 2 + share * c[2] / 3));
        }
        return weights;
    }

    /** Weight of an instant in the value at a share of the step. */
    static double at(int instant, double share) {
        double[] c = COEFFICIENT[instant];
        return c[0] + share * (c[1] + share * c[2]);
    }
}
