package org.warmvat.sun;

/**
 * Relative optical air mass of F. Kasten and A. T. Young (1989), "Revised optical air mass tables and approximation formula",
 * Applied Optics 28(22) 4735-4738: 1 at the zenith, 38 at the horizon.
 */
public final class AirMass {
    private AirMass() {}

    /** Air mass for an apparent zenith angle up to 90 degrees. */
    public static double kastenYoung1989(double zenithDeg) {
        return 1 / (Math.cos(Math.toRadians(zenithDeg)) + 0.50572 * Math.pow(96.07995 - zenithDeg, -1.6364));
    }
}
