package org.warmvat.design;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The gas side.
 *
 * @param referenceC temperature at which the feedstocks' rates hold, C, strictly between least and most
 * @param methaneFraction methane in dry biogas, volume fraction, 0.3..1
 * @param temperatures cardinal temperatures of digestion
 * @param airDosing air dosing, if any
 * @param reactionHeatKJPerNm3Methane heat set free by digestion, kJ per Nm3 of methane, -5000..5000 (equation 1.2)
 * @param heatCapacityJPerM3K volumetric heat capacity of the leaving gas, J/(m3 K), 0..5000 (equation 3.4)
 * @param holder what stores the gas, if anything
 * @param uses what burns it; needs a holder; names are unique
 * @param condensate how far it cools in its pipe, if its water is to be computed
 */
public record Gas(
        double referenceC,
        double methaneFraction,
        CardinalTemperatures temperatures,
        Optional<AirDosing> airDosing,
        double reactionHeatKJPerNm3Methane,
        double heatCapacityJPerM3K,
        Optional<GasHolder> holder,
        List<GasUse> uses,
        Optional<Condensate> condensate) {

    /** Refuses numbers out of range and a reference at which nothing grows. */
    public Gas {
        Ranges.stated(
                "reference temperature " + Ranges.text(referenceC) + " C",
                referenceC > temperatures.leastC() && referenceC < temperatures.mostC(),
                "between " + Ranges.text(temperatures.leastC()) + " and " + Ranges.text(temperatures.mostC()) + " C");
        Ranges.within("methane fraction", methaneFraction, 0.3, 1);
        Ranges.within("reaction heat in kJ/Nm3", reactionHeatKJPerNm3Methane, -5000, 5000);
        Ranges.within("heat capacity of gas in J/m3K", heatCapacityJPerM3K, 0, 5000);
        uses = List.copyOf(uses);
        Ranges.stated("uses of gas", uses.isEmpty() || holder.isPresent(), "a gas holder");
        Set<String> names = new HashSet<>();
        uses.forEach(use ->
                Ranges.stated("gas use named " + use.name() + " twice", names.add(use.name()), "each name once"));
    }

    /** Gas of which nothing more is told than how much there is. */
    public Gas(
            double referenceC,
            double methaneFraction,
            CardinalTemperatures temperatures,
            Optional<AirDosing> airDosing,
            double reactionHeatKJPerNm3Methane,
            double heatCapacityJPerM3K) {
        this(
                referenceC,
                methaneFraction,
                temperatures,
                airDosing,
                reactionHeatKJPerNm3Methane,
                heatCapacityJPerM3K,
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    /** Rate at a temperature over the rate at the reference, {@code f(T)/f(T_ref)} (equation 7.3). */
    public double rateFactor(double celsius) {
        return temperatures.relativeRate(celsius) / temperatures.relativeRate(referenceC);
    }
}
