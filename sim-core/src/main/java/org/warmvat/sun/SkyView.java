package org.warmvat.sun;

/**
 * What a horizon and trees leave of the sky in an hour (equations 13.1 and 13.2).
 *
 * @param sunShare share of the beam and of the light from the sun's direction that arrives, 0..1
 * @param skyShare share of the isotropic sky light (and of Perez' brightening near the horizon) that arrives, 0..1
 */
public record SkyView(double sunShare, double skyShare) {

    /** Nothing in the way. */
    public static final SkyView OPEN = new SkyView(1, 1);

    /** Checks the ranges. */
    public SkyView {
        if (!(sunShare >= 0 && sunShare <= 1 && skyShare >= 0 && skyShare <= 1 + 1e-12)) {
            throw new IllegalArgumentException("sky view out of range: " + sunShare + ", " + skyShare);
        }
    }

    /** The same behind trees that take away a share of the sun and half that share of the sky. */
    public SkyView behindTrees(double shade) {
        return shade == 0 ? this : new SkyView(sunShare * (1 - shade), skyShare * (1 - shade / 2));
    }
}
