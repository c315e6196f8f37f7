package org.warmvat.heating;

import java.util.Arrays;
import org.warmvat.design.heating.Collector;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.weather.Weather;

/**
 * What horizon and trees take from the light on a collector's plane, beside the same collector in the open.
 *
 * @param openKWhPerM2 irradiation in the open by month, January first
 * @param leftKWhPerM2 what is left of it
 */
public record ShadingLoss(double[] openKWhPerM2, double[] leftKWhPerM2) {

    private static final int MONTHS = 12;
    private static final double WH_PER_KWH = 1000;

    /** Sums over a weather file. */
    public static ShadingLoss of(Weather weather, Collector collector, Shading shading, double groundReflectance) {
        CollectorSun shaded = new CollectorSun(weather, collector, shading, groundReflectance);
        CollectorSun open = new CollectorSun(weather, collector, Shading.NONE, groundReflectance);
        double[] all = new double[MONTHS];
        double[] left = new double[MONTHS];
        for (int hour = 0; hour < weather.hours(); hour++) {
            int month = weather.month(hour) - 1;
            all[month] += open.totalWPerM2(hour) / WH_PER_KWH;
            left[month] += shaded.totalWPerM2(hour) / WH_PER_KWH;
        }
        return new ShadingLoss(all, left);
    }

    /** Share lost in a month, 1 to 12; not a number in a month without light. */
    public double lostShare(int month) {
        return 1 - leftKWhPerM2[month - 1] / openKWhPerM2[month - 1];
    }

    /** Share lost over all. */
    public double lostShare() {
        return 1
                - Arrays.stream(leftKWhPerM2).sum()
                        / Arrays.stream(openKWhPerM2).sum();
    }
}
