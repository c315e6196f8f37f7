package org.warmvat.weather;

/**
 * Undisturbed ground temperature by T. Kusuda and P. R. Achenbach (1965), "Earth temperature and thermal diffusivity at
 * selected stations in the United States", ASHRAE Transactions 71(1) 61-75 (model equation 2.6).
 *
 * @param meanC annual mean
 * @param amplitudeK half the annual swing at the surface, 0 or more
 * @param coldestDay of the surface, days from 1 January 00:00
 * @param diffusivityM2PerDay of the soil, above 0
 */
public record KusudaAchenbach1965(double meanC, double amplitudeK, double coldestDay, double diffusivityM2PerDay) {
    /** Diffusivity of soil where nothing better is known, m2/day. */
    public static final double DEFAULT_DIFFUSIVITY_M2_PER_DAY = 0.05;

    private static final double YEAR_DAYS = 365;

    /** Checks the ranges. */
    public KusudaAchenbach1965 {
        if (!(Double.isFinite(meanC) && Double.isFinite(coldestDay) && amplitudeK >= 0 && amplitudeK < 100)) {
            throw new IllegalArgumentException(
                    "ground out of range: mean " + meanC + ", amplitude " + amplitudeK + ", day " + coldestDay);
        }
        if (!(diffusivityM2PerDay > 0 && diffusivityM2PerDay < 1)) {
            throw new IllegalArgumentException("diffusivity out of range: " + diffusivityM2PerDay);
        }
    }

    /** With the default diffusivity. */
    public KusudaAchenbach1965(double meanC, double amplitudeK, double coldestDay) {
        this(meanC, amplitudeK, coldestDay, DEFAULT_DIFFUSIVITY_M2_PER_DAY);
    }

    /**
     * Temperature at a depth.
     *
     * @param depthM 0 or more
     * @param dayOfYear days from 1 January 00:00, fractions allowed
     * @return degrees C
     */
    public double temperatureC(double depthM, double dayOfYear) {
        double damping = Math.exp(-depthM * Math.sqrt(Math.PI / (YEAR_DAYS * diffusivityM2PerDay)));
        double lagDays = depthM / 2 * Math.sqrt(YEAR_DAYS / (Math.PI * diffusivityM2PerDay));
        double phase = 2 * Math.PI / YEAR_DAYS * (dayOfYear - coldestDay - lagDays);
        return meanC - amplitudeK * damping * Math.cos(phase);
    }
}
