package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.warmvat.design.Sky;

/** The block {@code sky}. */
record SkyKeys(
        @JsonProperty("beam_from_elevation_deg")
        @Key(says = "A sun lower than this gives no beam on any plane", unit = "deg", least = 0, most = 10, usual = "1")
        double beamFromElevationDeg,

        @JsonProperty("cloud_factor")
        @Key(
                says = "How far full cloud closes the gap between the clear sky's emissivity and 1",
                least = 0,
                most = 1,
                usual = "0.8")
        double cloudFactor,

        @JsonProperty("refraction_air_c")
        @Key(
                says = "Air temperature taken for refraction of sunlight",
                unit = "C",
                least = -40,
                most = 40,
                usual = "10")
        double refractionAirC) {

    Sky sky() {
        return new Sky(beamFromElevationDeg, cloudFactor, refractionAirC);
    }
}
