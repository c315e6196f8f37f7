package org.warmvat.weather.made;

/**
 * The course of air temperature over a mean day: D. G. Erbs, S. A. Klein and W. A. Beckman (1983), "Estimation of degree-days
 * and ambient temperature bin data from monthly-average temperatures", ASHRAE Journal 25(6) 60-65, quoted from memory and
 * checked for a mean of 0, a lowest hour near 6 and a highest near 15.
 */
final class DiurnalShape {
    /** Highest less lowest value of {@link #at}. */
    static final double PEAK_TO_PEAK = 0.976;

    private DiurnalShape() {}

    /** Deviation from the day's mean in units of the amplitude, for an hour of the solar clock (0 to 24). */
    static double at(double solarHour) {
        double t = 2 * Math.PI * (solarHour - 1) / 24;
        return 0.4632 * Math.cos(t - 3.805)
                + 0.0984 * Math.cos(2 * t - 0.360)
                + 0.0168 * Math.cos(3 * t - 0.822)
                + 0.0138 * Math.cos(4 * t - 3.513);
    }
}
