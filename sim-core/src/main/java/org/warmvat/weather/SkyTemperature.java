package org.warmvat.weather;

/**
 * Effective sky temperature (model equation 4.6): from the long-wave irradiance where known, otherwise by M. Martin and P.
 * Berdahl (1984), "Characteristics of infrared sky radiation in the United States", Solar Energy 33(3-4) 321-336, raised
 * by cloud (a convention of this model).
 */
public final class SkyTemperature {
    /** Stefan-Boltzmann constant, W/m2K4. */
    private static final double SIGMA_W_PER_M2K4 = 5.670374419e-8;

    private static final double ZERO_C_IN_K = 273.15;

    private SkyTemperature() {}

    /** From the downward long-wave irradiance. */
    public static double ofLongwaveC(double longwaveWPerM2) {
        return Math.sqrt(Math.sqrt(longwaveWPerM2 / SIGMA_W_PER_M2K4)) - ZERO_C_IN_K;
    }

    /**
     * Emissivity of a clear sky.
     *
     * @param dewPointC dew point near the ground
     * @param hoursPastMidnight of the clock
     * @param pressureHPa air pressure
     */
    public static double clearEmissivity(double dewPointC, double hoursPastMidnight, double pressureHPa) {
        double d = dewPointC / 100;
        return 0.711
                + 0.56 * d
                + 0.73 * d * d
                + 0.013 * Math.cos(2 * Math.PI * hoursPastMidnight / 24)
                + 0.00012 * (pressureHPa - 1000);
    }

    /** Emissivity raised by cloud, {@code e0 + factor (1 - e0) n}, never above 1; the usual factor is 0.8. */
    public static double cloudyEmissivity(double clearEmissivity, double cloudFraction, double cloudFactor) {
        double clear = Math.min(1, clearEmissivity);
        return clear + cloudFactor * (1 - clear) * cloudFraction;
    }

    /** Sky temperature of an emissivity, {@code e^(1/4) T_a} in kelvin. */
    public static double ofEmissivityC(double emissivity, double airC) {
        return Math.sqrt(Math.sqrt(emissivity)) * (airC + ZERO_C_IN_K) - ZERO_C_IN_K;
    }
}
