package org.warmvat.engine;

/**
 * Coefficients of the fast engine's method: a stiffly accurate, L-stable pair of orders 3 and 2 with an explicit first and
 * three implicit stages of one diagonal coefficient (Kennedy and Carpenter, "Additive Runge-Kutta schemes for
 * convection-diffusion-reaction equations", Applied Numerical Mathematics 44 (2003) 139-181, the implicit part of
 * ARK3(2)4L[2]SA). A test checks the order conditions.
 */
final class Tableau {

    static final int STAGES = 4;

    /** Index of the last stage, which is the step itself. */
    static final int LAST = STAGES - 1;

    /** Diagonal coefficient: the root of {@code x^3 - 3 x^2 + 3 x/2 - 1/6} near 0.44. */
    static final double GAMMA = 0.435866521508459;

    /** Times of the stages as shares of the step. */
    static final double[] C = {0, 2 * GAMMA, 0.6, 1};

    private static final double A32 = 0.6 * (0.6 - 2 * GAMMA) / (4 * GAMMA);
    private static final double B3 = (1.0 / 3 - GAMMA - 2 * GAMMA * (0.5 - GAMMA)) / (0.6 * (0.6 - 2 * GAMMA));
    private static final double B2 = (0.5 - GAMMA - 0.6 * B3) / (2 * GAMMA);

    /** Weights of earlier stages in a stage; the last row is that of the step itself. */
    static final double[][] A = {{}, {GAMMA}, {0.6 - A32 - GAMMA, A32}, {1 - GAMMA - B2 - B3, B2, B3}};

    /** Weights of the step. */
    static final double[] B = {1 - GAMMA - B2 - B3, B2, B3, GAMMA};

    /** Weights of the step of order 2. */
    static final double[] B_LOWER = {
        2756255671327.0 / 12835298489170.0,
        -10771552573575.0 / 22201958757719.0,
        9247589265047.0 / 10645013368117.0,
        2193209047091.0 / 5459859503100.0
    };

    /** Weights of the difference between both orders, which tells the error. */
    static final double[] ERROR = {B[0] - B_LOWER[0], B[1] - B_LOWER[1], B[2] - B_LOWER[2], B[3] - B_LOWER[3]};

    private Tableau() {}
}
