package org.warmvat.design;

import java.util.Optional;

/**
 * The gas side.
 *
 * @param referenceC temperature at which the feedstocks' rates hold, C, strictly between least and most
 * @param methaneFraction methane in dry biogas, volume fraction, 0.3..1
 * @param temperatures cardinal temperatures of digestion
 * @param airDosing air dosing, if any
 * @param reactionHeatKJPerNm3Methane heat set free by digestion, kJ per Nm3 of methane, -5000..5000 (equation 1.2)
 * @param heatCapacityJPerM3K volumetric heat capacity of the leaving gas, J/(m3 K), 0..5000 (equation 3.4)
 */
public record Gas(
        double referenceC,
        double methaneFraction,
        CardinalTemperatures temperatures,
        Optional<AirDosing> airDosing,
        double reactionHeatKJPerNm3Methane,
        double heatCapacityJPerM3K) {

    /** Refuses numbers out of range and a reference at which nothing grows. */
    public Gas {
        Ranges.stated(
                "reference temperature " + Ranges.text(referenceC) + " C",
                referenceC > temperatures.leastC() && referenceC < temperatures.mostC(),
                "between " + Ranges.text(temperatures.leastC()) + " and " + Ranges.text(temperatures.mostC()) + " C");
        Ranges.within("methane fraction", methaneFraction, 0.3, 1);
        Ranges.within("reaction heat in kJ/Nm3", reactionHeatKJPerNm3Methane, -5000, 5000);
        Ranges.within("heat capacity of gas in J/m3K", heatCapacityJPerM3K, 0, 5000);
    }

    /** Rate at a temperature over the rate at the reference, {@code f(T)/f(T_ref)} (equation 7.3). */
    public double rateFactor(double celsius) {
        return temperatures.relativeRate(celsius) / temperatures.relativeRate(referenceC);
    }
}
