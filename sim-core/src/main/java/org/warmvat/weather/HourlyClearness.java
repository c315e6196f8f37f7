package org.warmvat.weather;

import org.warmvat.sun.AirMass;

/**
 * Hourly clearness within a day of given clearness: R. J. Aguiar and M. Collares-Pereira (1992), "TAG: a time-dependent,
 * autoregressive, Gaussian model for generating synthetic hourly radiation", Solar Energy 49(3) 167-174. The mean curve, the
 * spread and the clear limit are as publicly transcribed; the innovation keeps the standardised series at unit variance.
 */
final class HourlyClearness {
    private HourlyClearness() {}

    /** Mean hourly clearness on a day of clearness k with the sun's elevation of the given sine, above 0. */
    static double mean(double k, double sinElevation) {
        double level = -0.19 + 1.12 * k + 0.24 * Math.exp(-8 * k);
        double rise = 0.32 - 1.6 * (k - 0.5) * (k - 0.5);
        double bend = 0.19 + 2.27 * k * k - 2.51 * k * k * k;
        return level + rise * Math.exp(-bend / sinElevation);
    }

    /** Standard deviation about the mean. */
    static double deviation(double k, double sinElevation) {
        double a = 0.14 * Math.exp(-20 * (k - 0.35) * (k - 0.35));
        double b = 3 * (k - 0.45) * (k - 0.45) + 16 * Math.pow(k, 5);
        return a * Math.exp(b * (1 - sinElevation));
    }

    /** Correlation of an hour's standardised deviation with the hour before. */
    static double persistence(double k) {
        return 0.38 + 0.06 * Math.cos(7.4 * k - 2.5);
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
