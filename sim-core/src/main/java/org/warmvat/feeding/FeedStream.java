package org.warmvat.feeding;

import org.warmvat.design.tank.Contents;

/**
 * One stream into the tank, feedstocks together or dilution water, and its enthalpy (equation 3.1).
 *
 * @param contents specific heats of water, ice and solids
 * @param solidsFraction total solids of the stream, mass fraction
 * @param freezingRangeK kelvin below 0 °C over which its water turns to ice
 */
public record FeedStream(Contents contents, double solidsFraction, double freezingRangeK) {

    /** Heat of fusion of ice, J/kg. */
    public static final double FUSION_J_PER_KG = 334_000;

    /** Specific heat of the unfrozen stream, J/(kg K). */
    public double specificHeatJPerKgK() {
        return contents.specificHeatJPerKgK(solidsFraction);
    }

    /**
     * Enthalpy above 0 °C unfrozen, J/kg; below 0 °C a share {@code min(1, -T/2 K)} of the water is ice.
     *
     * @param celsius temperature of the stream
     */
    public double enthalpyJPerKg(double celsius) {
        if (celsius >= 0) {
            return specificHeatJPerKgK() * celsius;
        }
        double ice = Math.min(1, -celsius / freezingRangeK);
        double specificHeat =
                ice * contents.frozenSpecificHeatJPerKgK(solidsFraction) + (1 - ice) * specificHeatJPerKgK();
        return -ice * (1 - solidsFraction) * FUSION_J_PER_KG + specificHeat * celsius;
    }
}
