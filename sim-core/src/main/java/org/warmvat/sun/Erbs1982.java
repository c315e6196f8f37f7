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

    /**
     * Daily diffuse share.
     *
     * @param clearness daily clearness index
     * @param sunsetAngleDeg hour angle of sunset; the curve of winter holds up to 81.4
     * @return 0.143 to 1
     */
    public static double dailyDiffuseFraction(double clearness, double sunsetAngleDeg) {
        double k = clearness;
        if (sunsetAngleDeg <= 81.4) {
            return k < 0.715 ? 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + k * 9.3879))) : 0.143;
        }
        return k < 0.722 ? 1 + k * k * (-2.5557 + k * 0.8448) + 0.2832 * k : 0.175;
    }

    /**
     * Monthly diffuse share.
     *
     * @param clearness monthly mean clearness index, 0.3 to 0.8
     * @param sunsetAngleDeg hour angle of sunset on the month's mean day
     * @return the share
     */
    public static double monthlyDiffuseFraction(double clearness, double sunsetAngleDeg) {
        double k = clearness;
        return sunsetAngleDeg <= 81.4
                ? 1.391 + k * (-3.560 + k * (4.189 - k * 2.137))
                : 1.311 + k * (-3.022 + k * (3.427 - k * 1.821));
    }
}
