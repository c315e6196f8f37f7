package org.warmvat.engine;

import java.util.Arrays;

/**
 * Coefficients of an implicit Runge-Kutta pair: stiffly accurate, L-stable, an explicit first stage and implicit ones of one
 * diagonal coefficient after it (Kennedy and Carpenter, "Additive Runge-Kutta schemes for convection-diffusion-reaction
 * equations", Applied Numerical Mathematics 44 (2003) 139-181, the implicit parts). A test checks the order conditions.
 */
final class Tableau {

    /** Orders 3 and 2, ARK3(2)4L[2]SA: three solutions a step. */
    static final Tableau THIRD_ORDER = thirdOrder();

    /** Orders 4 and 3, ARK4(3)6L[2]SA: five solutions a step. */
    static final Tableau FOURTH_ORDER = fourthOrder();

    private final int errorOrder;
    private final double gamma;
    private final double[] c;
    private final double[][] a;
    private final double[] b;
    private final double[] lower;

    private Tableau(int errorOrder, double gamma, double[] c, double[][] a, double[] lower) {
        this.errorOrder = errorOrder;
        this.gamma = gamma;
        this.c = c;
        this.a = a;
        this.lower = lower;
        b = Arrays.copyOf(a[a.length - 1], a.length);
        b[a.length - 1] = gamma;
    }

    /** Number of stages, the explicit one included. */
    int stages() {
        return c.length;
    }

    /** Power of the length of a step with which the difference of both orders goes. */
    int errorOrder() {
        return errorOrder;
    }

    /** Diagonal coefficient of the implicit stages. */
    double gamma() {
        return gamma;
    }

    /** Time of a stage as a share of the step. */
    double c(int stage) {
        return c[stage];
    }

    /** Weights of the earlier stages in a stage. Shared: read only. */
    double[] a(int stage) {
        return a[stage];
    }

    /** Weight of a stage in the step. */
    double b(int stage) {
        return b[stage];
    }

    /** Weight of a stage in the difference of both orders. */
    double error(int stage) {
        return b[stage] - lower[stage];
    }

    private static Tableau thirdOrder() {
        // the root of x^3 - 3 x^2 + 3 x/2 - 1/6 near 0.44
        double gamma = 0.435866521508459;
        double a32 = 0.6 * (0.6 - 2 * gamma) / (4 * gamma);
        double b3 = (1.0 / 3 - gamma - 2 * gamma * (0.5 - gamma)) / (0.6 * (0.6 - 2 * gamma));
        double b2 = (0.5 - gamma - 0.6 * b3) / (2 * gamma);
        return new Tableau(
                3,
                gamma,
                new double[] {0, 2 * gamma, 0.6, 1},
                new double[][] {{}, {gamma}, {0.6 - a32 - gamma, a32}, {1 - gamma - b2 - b3, b2, b3}},
                new double[] {
                    2756255671327.0 / 12835298489170.0,
                    -10771552573575.0 / 22201958757719.0,
                    9247589265047.0 / 10645013368117.0,
                    2193209047091.0 / 5459859503100.0
                });
    }

    private static Tableau fourthOrder() {
        return new Tableau(
                4,
                0.25,
                new double[] {0, 0.5, 83.0 / 250, 31.0 / 50, 17.0 / 20, 1},
                new double[][] {
                    {},
                    {0.25},
                    {8611.0 / 62500, -1743.0 / 31250},
                    {5012029.0 / 34652500, -654441.0 / 2922500, 174375.0 / 388108},
                    {
                        15267082809.0 / 155376265600.0,
                        -71443401.0 / 120774400,
                        730878875.0 / 902184768,
                        2285395.0 / 8070912
                    },
                    {82889.0 / 524892, 0, 15625.0 / 83664, 69875.0 / 102672, -2260.0 / 8211}
                },
                new double[] {
                    4586570599.0 / 29645900160.0,
                    0,
                    178811875.0 / 945068544,
                    814220225.0 / 1159782912,
                    -3700637.0 / 11593932,
                    61727.0 / 225920
                });
    }
}
