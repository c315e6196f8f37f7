package org.warmvat.engine.exponential;

/**
 * The first three phi functions of {@code -z}, the answers of a decaying mode to a constant, a straight line and a parabola (Hochbruck
 * and Ostermann, Exponential integrators, Acta Numerica 19 (2010)): {@code phi1 = (1 - exp(-z))/z, phi2 = (1 - phi1)/z, phi3 = (1/2 -
 * phi2)/z}.
 */
final class PhiFunctions {

    /** Below this four terms of the series are exact to 1e-10 of phi3, whose share in a step is itself small. */
    private static final double TINY = 0.02;

    /** Below this the closed forms cancel by more than two digits. */
    private static final double SMALL = 0.25;

    double phi1;
    double phi2;
    double phi3;

    /** Works them out at a product of decay rate and time. */
    void at(double z) {
        // the third by its series, the others back from it: nothing cancels
        if (Math.abs(z) < TINY) {
            phi3 = 1.0 / 6 - z * (1.0 / 24 - z * (1.0 / 120 - z * (1.0 / 720 - z / 5040)));
        } else if (Math.abs(z) < SMALL) {
            phi3 = 1.0 / 6
                    - z
                            * (1.0 / 24
                                    - z
                                            * (1.0 / 120
                                                    - z
                                                            * (1.0 / 720
                                                                    - z
                                                                            * (1.0 / 5040
                                                                                    - z
                                                                                            * (1.0 / 40320
                                                                                                    - z / 362880)))));
        } else {
            double per = 1 / z;
            phi1 = (1 - Math.exp(-z)) * per;
            phi2 = (1 - phi1) * per;
            phi3 = (0.5 - phi2) * per;
            return;
        }
        phi2 = 0.5 - z * phi3;
        phi1 = 1 - z * phi2;
    }
}
