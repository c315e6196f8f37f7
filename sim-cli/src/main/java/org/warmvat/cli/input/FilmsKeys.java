package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.warmvat.design.Films;
import org.warmvat.design.Fitting;

/** The block {@code envelope.films}. */
record FilmsKeys(
        @JsonProperty("wet_w_m2k")
        @Key(says = "Slurry to wetted wall and floor", unit = "W/m2K", least = 1, most = 5000, usual = "100")
        double wetWPerM2K,

        @JsonProperty("surface_w_m2k")
        @Key(
                says = "Free surface of the slurry to the headspace: convection, radiation and vapour together",
                unit = "W/m2K",
                least = 0.1,
                most = 1000,
                usual = "10")
        double surfaceWPerM2K,

        @JsonProperty("dry_w_m2k")
        @Key(says = "Headspace to lid and dry wall", unit = "W/m2K", least = 0.1, most = 1000, usual = "6")
        double dryWPerM2K,

        @JsonProperty("outer_still_w_m2k")
        @Key(
                says = "Convection at an outer face in still air (ISO 6946)",
                unit = "W/m2K",
                least = 0.1,
                most = 100,
                usual = "4")
        double outerStillWPerM2K,

        @JsonProperty("outer_per_wind_j_m3k")
        @Key(
                says = "Rise of that convection per m/s of wind at the tank (ISO 6946)",
                unit = "W/m2K per m/s",
                least = 0,
                most = 50,
                usual = "4")
        double outerPerWindJPerM3K,

        @JsonProperty("indoor_w_m2k")
        @Key(
                says = "Whole coefficient of an outer face in a room (ISO 6946, 1/0.13)",
                unit = "W/m2K",
                least = 0.1,
                most = 100,
                usual = "7.7")
        double indoorWPerM2K,

        @JsonProperty("pipe_outer_w_m2k")
        @Key(
                says = "Outer coefficient of a pipe that sticks out",
                unit = "W/m2K",
                least = 0.1,
                most = 100,
                usual = "10")
        double pipeOuterWPerM2K) {

    Films films() {
        return new Films(wetWPerM2K, surfaceWPerM2K, dryWPerM2K, outerStillWPerM2K, outerPerWindJPerM3K, indoorWPerM2K);
    }

    Fitting.PipeFilm pipeFilm(double slurryConductivityWPerMK) {
        return new Fitting.PipeFilm(slurryConductivityWPerMK, pipeOuterWPerM2K);
    }
}
