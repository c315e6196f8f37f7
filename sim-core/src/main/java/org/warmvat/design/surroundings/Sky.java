package org.warmvat.design.surroundings;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Conventions about sun and sky.
 *
 * @param beamFromElevationDeg sun below this gives no beam on any plane, degrees (equation 4.4)
 * @param cloudFactor how far full cloud closes the gap between clear-sky emissivity and 1 (equation 4.6)
 * @param refractionAirC air temperature taken for refraction, C (equation 4.2)
 */
public record Sky(
        @Key(
                name = "beam_from_elevation_deg",
                says = "A sun lower than this gives no beam on any plane",
                range = "0 to 10 deg",
                usual = "1")
        double beamFromElevationDeg,

        @Key(
                name = "cloud_factor",
                says = "How far full cloud closes the gap between the clear sky's emissivity and 1",
                range = "0 to 1",
                usual = "0.8")
        double cloudFactor,

        @Key(
                name = "refraction_air_c",
                says = "Air temperature taken for refraction of sunlight",
                range = "-40 to 40 C",
                usual = "10")
        double refractionAirC) {

    /** Refuses numbers out of range. */
    public Sky {
        Ranges.check(Sky.class, beamFromElevationDeg, cloudFactor, refractionAirC);
    }
}
