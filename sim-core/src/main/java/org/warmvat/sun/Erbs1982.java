package org.warmvat.sun;

/**
 * Diffuse share of global irradiance by D. G. Erbs, S. A. Klein and J. A. Duffie (1982), "Estimation of the diffuse
 * radiation fraction for hourly, daily and monthly-average global radiation", Solar Energy 28(4) 293-302. The curves
 * are not quite continuous at their joints, as published (about 0.0003 in the hourly one).
 */
public final class Erbs1982 {
    private Erbs1982() {}

    /**
     * Hourly diffuse share.
     *
     * @param clearness hourly clearness index, global over extraterrestrial on the horizontal, 0 or more
     * @return 0.165 to 1
     */
    public static double hourlyDiffuseFraction(double clearness) {
        double k = clearness;
        if (k <= 0.22) {
            return 1 - 0.09 * k;
        }
        return k <= 0.80 ? 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336))) : 0.165;
    }
}
