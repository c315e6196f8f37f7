package org.warmvat.design.envelope;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Surface coefficients inside and outside, W/(m2 K).
 *
 * @param wetWPerM2K slurry to wetted wall and base (equation 2.3)
 * @param surfaceWPerM2K slurry surface to headspace
 * @param dryWPerM2K headspace to lid and dry wall
 * @param outerStillWPerM2K outer convection in still air (equation 2.4)
 * @param outerPerWindJPerM3K rise of outer convection per m/s of wind at the tank, W/(m2 K) per m/s
 * @param indoorWPerM2K whole outer coefficient in a room
 * @param pipeOuterWPerM2K outer coefficient of a pipe that sticks out
 */
public record Films(
        @Key(name = "wet_w_m2k", says = "Slurry to wetted wall and base", range = "1 to 5000 W/m2K", usual = "100")
        double wetWPerM2K,

        @Key(
                name = "surface_w_m2k",
                says = "Free surface of the slurry to the headspace: convection, radiation and vapour together",
                range = "0.1 to 1000 W/m2K",
                usual = "10")
        double surfaceWPerM2K,

        @Key(name = "dry_w_m2k", says = "Headspace to lid and dry wall", range = "0.1 to 1000 W/m2K", usual = "6")
        double dryWPerM2K,

        @Key(
                name = "outer_still_w_m2k",
                says = "Convection at an outer face in still air (ISO 6946)",
                range = "0.1 to 100 W/m2K",
                usual = "4")
        double outerStillWPerM2K,

        @Key(
                name = "outer_per_wind_j_m3k",
                says = "Rise of that convection per m/s of wind at the tank (ISO 6946)",
                range = "0 to 50 W/m2K per m/s",
                usual = "4")
        double outerPerWindJPerM3K,

        @Key(
                name = "indoor_w_m2k",
                says = "Whole coefficient of an outer face in a room (ISO 6946, 1/0.13)",
                range = "0.1 to 100 W/m2K",
                usual = "7.7")
        double indoorWPerM2K,

        @Key(
                name = "pipe_outer_w_m2k",
                says = "Outer coefficient of a pipe that sticks out",
                range = "0.1 to 100 W/m2K",
                usual = "10")
        double pipeOuterWPerM2K) {

    /** Refuses coefficients out of range. */
    public Films {
        Ranges.check(
                Films.class,
                wetWPerM2K,
                surfaceWPerM2K,
                dryWPerM2K,
                outerStillWPerM2K,
                outerPerWindJPerM3K,
                indoorWPerM2K,
                pipeOuterWPerM2K);
    }
}
