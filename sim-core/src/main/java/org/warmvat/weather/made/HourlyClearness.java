package org.warmvat.weather.made;

import org.warmvat.sun.AirMass;

/**
 * Hourly clearness within a day of given clearness. The mean curve and the clear limit are those of R. J. Aguiar and M.
 * Collares-Pereira (1992), "TAG: a time-dependent, autoregressive, Gaussian model for generating synthetic hourly radiation", Solar
 * Energy 49(3) 167-174, as publicly transcribed. The persistence is that of V. A. Graham and K. G. T. Hollands (1990), "A method to
 * generate synthetic hourly solar radiation globally", Solar Energy 44(6) 333-341. The spread is our own law, see {@link #deviation}.
 */
final class HourlyClearness {
    /** Correlation of an hour's standardised deviation with the hour before (mean of those found by Graham and Hollands, 1990). */
    static final double PERSISTENCE = 0.54;

    private HourlyClearness() {}

    /** Mean hourly clearness on a day of clearness k with the sun's elevation of the given sine, above 0. */
    static double mean(double k, double sinElevation) {
        double level = -0.19 + 1.12 * k + 0.24 * Math.exp(-8 * k);
        double rise = 0.32 - 1.6 * (k - 0.5) * (k - 0.5);
        double bend = 0.19 + 2.27 * k * k - 2.51 * k * k * k;
        return level + rise * Math.exp(-bend / sinElevation);
    }

    /**
     * Standard deviation about the mean, before the clear limit cuts the brightest hours: {@code 0.16 sin(pi (k - 0.1)/0.8)^1.5}, at
     * least 0.02. A convention: overcast days and clear days are even, broken ones are not. Graham and Hollands (1990) have the same
     * shape, {@code 0.1557 sin(pi k/0.933)} (from memory), but more of it on dull days than was found; numbers chosen on the hours of one
     * real year (Buffalo: 0.04 at k = 0.18, 0.12 to 0.14 from 0.37 to 0.57, 0.05 at 0.72). Those of a second (Greensboro) lie within 0.02.
     */
    static double deviation(double k) {
        double broken = Math.sin(Math.PI * Math.max(0, Math.min(0.8, k - 0.1)) / 0.8);
        return Math.max(0.02, 0.16 * broken * Math.sqrt(broken));
    }

    /** Highest clearness in an hour of the solar clock, 0 to 24, at its middle. */
    static double clearLimit(double solarHour) {
        return 0.88 * Math.cos(Math.PI * (solarHour - 12.0) / 30);
    }

    /**
     * Clearness under a clear sky, falling with the air mass by the law of A. B. Meinel and M. P. Meinel (1976), {@code
     * 0.7^(m^0.678)} (from memory), to which a quarter is added for the light of the sky (convention).
     */
    static double clearSky(double zenithDeg) {
        double airMass = AirMass.kastenYoung1989(Math.min(90, zenithDeg));
        return 0.25 + 0.75 * Math.pow(0.7, Math.pow(airMass, 0.678));
    }
}
