package org.warmvat.design;

/**
 * The year's wave of the ground's surface temperature, where it is given rather than fitted to the weather (equation 2.6).
 *
 * @param meanC mean, C, -30..40
 * @param amplitudeK amplitude, K, 0..50
 * @param coldestDay day of the coldest point, days after 1 January 0:00, 0..366
 */
public record GroundWave(double meanC, double amplitudeK, double coldestDay) {

    /** Refuses numbers out of range. */
    public GroundWave {
        Ranges.within("mean of the ground in C", meanC, -30, 40);
        Ranges.within("amplitude of the ground in K", amplitudeK, 0, 50);
        Ranges.within("coldest day of the ground", coldestDay, 0, 366);
    }
}
