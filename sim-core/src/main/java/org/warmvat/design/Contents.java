package org.warmvat.design;

import java.util.Optional;

/**
 * Properties of the slurry in the tank (equation 1.2).
 *
 * @param densityKgPerM3 density, kg/m3, 900..1300
 * @param totalSolidsFraction total solids, mass fraction 0..0.5; absent: see {@link Design#steadyTotalSolidsFraction()}
 * @param solidsJPerKgK specific heat of dry solids, J/(kg K), 500..4186
 */
public record Contents(double densityKgPerM3, Optional<Double> totalSolidsFraction, double solidsJPerKgK) {

    /** Specific heat of liquid water in all mixtures, J/(kg K). */
    public static final double WATER_J_PER_KG_K = 4186;

    /** Specific heat of ice in all mixtures, J/(kg K). */
    public static final double ICE_J_PER_KG_K = 2100;

    /** Refuses numbers out of range. */
    public Contents {
        Ranges.within("density of the contents in kg/m3", densityKgPerM3, 900, 1300);
        totalSolidsFraction.ifPresent(w -> Ranges.within("total solids of the contents", w, 0, 0.5));
        Ranges.within("specific heat of solids in J/kgK", solidsJPerKgK, 500, 4186);
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
