package org.warmvat.design.tank;

import java.util.Optional;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Properties of the slurry in the tank (equation 1.2).
 *
 * @param densityKgPerM3 density, kg/m3
 * @param totalSolidsFraction total solids, mass fraction; absent: see {@link Design#steadyTotalSolidsFraction()}
 * @param solidsJPerKgK specific heat of dry solids, J/(kg K)
 * @param conductivityWPerMK conductivity of the still slurry in a pipe that sticks out, W/(m K)
 */
public record Contents(
        @Key(name = "density_kg_m3", says = "Density of the slurry", range = "900 to 1300 kg/m3", usual = "1010")
        double densityKgPerM3,

        @Key(
                name = "total_solids",
                says = "Total solids of the slurry in the tank; a file may say tank.total_solids as well",
                range = "0 to 0.5 kg/kg",
                otherwise = "the feed's solids less the volatile solids digested at steady state and set-point")
        Optional<Double> totalSolidsFraction,

        @Key(
                name = "solids_j_kgk",
                says = "Specific heat of dry solids; that of water is 4186 J/kgK",
                range = "500 to 4186 J/kgK",
                usual = "1600")
        double solidsJPerKgK,

        @Key(
                name = "conductivity_w_mk",
                says = "Conductivity of still slurry in a pipe that sticks out",
                range = "0.1 to 5 W/mK",
                usual = "0.6")
        double conductivityWPerMK) {

    /** Specific heat of liquid water in all mixtures, J/(kg K). */
    public static final double WATER_J_PER_KG_K = 4186;

    /** Specific heat of ice in all mixtures, J/(kg K). */
    public static final double ICE_J_PER_KG_K = 2100;

    /** Refuses numbers out of range. */
    public Contents {
        Ranges.check(Contents.class, densityKgPerM3, totalSolidsFraction, solidsJPerKgK, conductivityWPerMK);
    }

    /** Specific heat of a mixture with a mass fraction of solids, J/(kg K). */
    public double specificHeatJPerKgK(double solidsFraction) {
        return (1 - solidsFraction) * WATER_J_PER_KG_K + solidsFraction * solidsJPerKgK;
    }

    /** Specific heat of a frozen mixture with a mass fraction of solids, J/(kg K) (equation 3.1). */
    public double frozenSpecificHeatJPerKgK(double solidsFraction) {
        return (1 - solidsFraction) * ICE_J_PER_KG_K + solidsFraction * solidsJPerKgK;
    }
}
