package org.warmvat.sun;

/**
 * True less mean solar time by J. W. Spencer (1971), "Fourier series representation of the position of the sun", Search 2(5) 172, as
 * given by M. Iqbal (1983), "An Introduction to Solar Radiation"; good to half a minute.
 */
public final class EquationOfTime {
    private static final double MINUTES_PER_RADIAN = 229.18;

    private EquationOfTime() {}

    /**
     * By how much the sundial is ahead of a clock of the place's own longitude.
     *
     * @param dayOfYear 1 on 1 January, to 366
     * @return minutes, -14.3 in February to 16.4 in November
     */
    public static double minutes(int dayOfYear) {
        double g = 2 * Math.PI * (dayOfYear - 1) / 365;
        return MINUTES_PER_RADIAN
                * (0.000075
                        + 0.001868 * Math.cos(g)
                        - 0.032077 * Math.sin(g)
                        - 0.014615 * Math.cos(2 * g)
                        - 0.040849 * Math.sin(2 * g));
    }
}
