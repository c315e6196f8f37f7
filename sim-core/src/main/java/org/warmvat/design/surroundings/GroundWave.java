package org.warmvat.design.surroundings;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * The year's wave of the ground's surface temperature, where it is given rather than fitted to the weather (equation 2.6).
 *
 * @param meanC mean, C
 * @param amplitudeK amplitude, K
 * @param coldestDay day of the coldest point, days after 1 January 0:00
 */
public record GroundWave(
        @Key(name = "mean_c", says = "Mean of the ground's yearly wave", range = "-30 to 40 C")
        double meanC,

        @Key(name = "amplitude_k", says = "Amplitude of that wave at the surface", range = "0 to 50 K")
        double amplitudeK,

        @Key(name = "coldest_day", says = "Day of its coldest point, counted from 1 January", range = "0 to 366 day")
        double coldestDay) {

    /** Refuses numbers out of range. */
    public GroundWave {
        Ranges.check(GroundWave.class, meanC, amplitudeK, coldestDay);
    }
}
