package org.warmvat.design;

/**
 * What wind and sky add to a collector's losses (equation 13.4; coefficients of ISO 9806:2017). All 0 leaves equation 5.1.
 *
 * @param a3JPerM3K loss that grows with the wind, J/(m3 K), 0..20
 * @param a4 exchange with the sky, 0..1
 * @param a6SPerM sun taken less with the wind, s/m, 0..0.3
 * @param exposureFactor wind at the collector over the file's wind at 10 m, 0..1.5
 */
public record WindAndSkyLoss(double a3JPerM3K, double a4, double a6SPerM, double exposureFactor) {

    /** Wind at which a1 and eta0 hold, m/s. */
    public static final double REFERENCE_WIND_M_PER_S = 3;

    /** None. */
    public static final WindAndSkyLoss NONE = new WindAndSkyLoss(0, 0, 0, 0.5);

    /** Refuses numbers out of range. */
    public WindAndSkyLoss {
        Ranges.within("a3 in J/m3K", a3JPerM3K, 0, 20);
        Ranges.within("a4", a4, 0, 1);
        Ranges.within("a6 in s/m", a6SPerM, 0, 0.3);
        Ranges.within("exposure factor of the collector", exposureFactor, 0, 1.5);
    }

    /** Whether nothing is added. */
    public boolean isNone() {
        return a3JPerM3K == 0 && a4 == 0 && a6SPerM == 0;
    }
}
