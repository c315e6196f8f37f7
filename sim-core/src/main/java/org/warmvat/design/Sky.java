package org.warmvat.design;

/**
 * Conventions about sun and sky.
 *
 * @param beamFromElevationDeg sun below this gives no beam on any plane, degrees, 0..10 (equation 4.4)
 * @param cloudFactor how far full cloud closes the gap between clear-sky emissivity and 1, 0..1 (equation 4.6)
 * @param refractionAirC air temperature taken for refraction, C, -40..40 (equation 4.2)
 */
public record Sky(double beamFromElevationDeg, double cloudFactor, double refractionAirC) {

    /** Refuses numbers out of range. */
    public Sky {
        Ranges.within("least elevation of beam in degrees", beamFromElevationDeg, 0, 10);
        Ranges.within("cloud factor", cloudFactor, 0, 1);
        Ranges.within("air temperature for refraction in C", refractionAirC, -40, 40);
    }
}
