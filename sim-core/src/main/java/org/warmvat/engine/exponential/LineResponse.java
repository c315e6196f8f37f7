package org.warmvat.engine.exponential;

/**
 * What a decaying mode does over a step while what drives it runs in a straight line, told by mean and rise: its own mean, its own rise
 * (twelve times the first moment about the middle) and its end, each from its beginning and from mean and rise of the drive times the
 * step's length.
 */
final class LineResponse {

    /** Rise of a line by its first moment about the middle. */
    private static final double MOMENT = 12;

    /** Below this the closed forms of the moments cancel. */
    private static final double SMALL = 0.3;

    /** So many terms of the series are exact below {@link #SMALL}. */
    private static final int TERMS = 14;

    /** Left of the beginning at the end, in the mean, in the rise. */
    double left;

    double meanLeft;
    double riseLeft;
    /** Of the drive's mean and rise in the end, in the mean, in the rise. */
    double endByMean;

    double endByRise;
    double meanByMean;
    double meanByRise;
    double riseByMean;
    double riseByRise;

    /** Works them out at a product of decay rate and the step's length. */
    void at(double z) {
        double phi1;
        double phi2;
        double phi3;
        double chi; // 1/12 - z omega
        double omega; // int (s - 1/2) s^2 phi2(z s) ds
        if (z < SMALL) {
            phi3 = 0;
            omega = 0;
            double term = 0.5; // (-z)^j/(j + 2)!
            for (int j = 0; j < TERMS; j++) {
                phi3 += term / (j + 3);
                omega += term * (j + 2) / (2.0 * (j + 3) * (j + 4));
                term *= -z / (j + 3);
            }
            phi2 = 0.5 - z * phi3;
            phi1 = 1 - z * phi2;
            chi = 1 / MOMENT - z * omega;
        } else {
            double decayed = Math.exp(-z);
            phi1 = (1 - decayed) / z;
            phi2 = (1 - phi1) / z;
            phi3 = (0.5 - phi2) / z;
            chi = -((phi1 - decayed) / z - 0.5 * phi1) / z;
            omega = (1 / MOMENT - chi) / z;
        }
        left = 1 - z * phi1;
        meanLeft = phi1;
        riseLeft = -MOMENT * z * chi;
        endByMean = phi1;
        endByRise = phi2 - 0.5 * phi1;
        meanByMean = phi2;
        meanByRise = phi3 - 0.5 * phi2;
        riseByMean = MOMENT * chi;
        riseByRise = MOMENT * (omega - 0.5 * chi);
    }
}
