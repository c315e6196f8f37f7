package org.warmvat.sun;

/**
 * Irradiance outside the atmosphere on a surface facing the sun: 1361 W/m2 times the eccentricity correction of J. W.
 * Spencer (1971), "Fourier series representation of the position of the sun", Search 2(5) 172 (model equation 4.3).
 */
public final class Extraterrestrial {
    /** Total solar irradiance at the mean distance, W/m2. */
    public static final double SOLAR_CONSTANT_W_PER_M2 = 1361;

    private Extraterrestrial() {}

    /**
     * Normal irradiance of a day.
     *
     * @param dayOfYear 1 on 1 January, to 366
     * @return W/m2
     */
    public static double normalWPerM2(int dayOfYear) {
        return SOLAR_CONSTANT_W_PER_M2 * eccentricity(dayOfYear);
    }

    /** Spencer's square of the mean over the actual distance, 1.035 in early January to 0.967 in early July. */
    public static double eccentricity(int dayOfYear) {
        double g = 2 * Math.PI * (dayOfYear - 1) / 365;
        return 1.000110
                + 0.034221 * Math.cos(g)
                + 0.001280 * Math.sin(g)
                + 0.000719 * Math.cos(2 * g)
                + 0.000077 * Math.sin(2 * g);
    }
}
