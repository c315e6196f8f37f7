package org.warmvat.design.gas;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * The gas side.
 *
 * @param referenceC temperature at which the feedstocks' rates hold, C, strictly between least and most
 * @param methaneFraction methane in dry biogas, volume fraction
 * @param temperatures cardinal temperatures of digestion
 * @param airDosing air dosing, if any
 * @param reactionHeatKJPerNm3Methane heat set free by digestion, kJ per Nm3 of methane (equation 1.2)
 * @param heatCapacityJPerM3K volumetric heat capacity of the leaving gas, J/(m3 K) (equation 3.4)
 * @param holder what stores the gas, if anything
 * @param uses what burns it; needs a holder; names are unique
 * @param pipe the pipe in which its water falls out, if that is to be computed
 */
public record Gas(
        @Key(
                name = "reference_c",
                says = "Temperature at which the feedstocks' rates hold",
                range = "-20 to 120 C",
                usual = "35")
        double referenceC,

        @Key(
                name = "methane_fraction",
                says = "Methane in dry biogas by volume",
                range = "0.3 to 1 Nm3/Nm3",
                usual = "0.58")
        double methaneFraction,

        @Key(
                name = "temperatures_c",
                says = "Minimum, optimum and maximum of digestion (Rosso et al. 1993)",
                usual = "{}")
        CardinalTemperatures temperatures,

        @Key(name = "air_dosing", says = "Air let in against hydrogen sulphide; leave the block out for none")
        Optional<AirDosing> airDosing,

        @Key(
                name = "reaction_heat_kj_per_nm3_methane",
                says = "Heat set free by digestion per Nm3 of methane",
                range = "-5000 to 5000 kJ/Nm3",
                usual = "0")
        double reactionHeatKJPerNm3Methane,

        @Key(
                name = "heat_capacity_j_m3k",
                says = "Heat capacity of the leaving gas",
                range = "0 to 5000 J/m3K",
                usual = "1440")
        double heatCapacityJPerM3K,

        @Key(name = "holder", says = "What stores the gas between making and use; leave the block out for none")
        Optional<GasHolder> holder,

        @Key(name = "uses", says = "What burns gas from the holder", usual = "[]", quiet = true)
        List<GasUse> uses,

        @Key(name = "condensate", says = "Pipe in which the gas's water falls out; leave the block out for none")
        Optional<GasPipe> pipe) {

    /** Refuses numbers out of range and a reference at which nothing grows. */
    public Gas {
        uses = List.copyOf(uses);
        Ranges.check(
                Gas.class,
                referenceC,
                methaneFraction,
                temperatures,
                airDosing,
                reactionHeatKJPerNm3Methane,
                heatCapacityJPerM3K,
                holder,
                uses,
                pipe);
        Ranges.stated(uses.isEmpty() || holder.isPresent(), "uses", "need a gas holder, expected a block holder");
        Ranges.stated(
                uses.stream().map(GasUse::name).distinct().count() == uses.size(),
                "uses",
                "have a name twice, expected each once");
        Ranges.stated(
                referenceC > temperatures.leastC() && referenceC < temperatures.mostC(),
                "reference_c",
                Shown.number(referenceC) + ", expected between temperatures_c.least and most, "
                        + Shown.number(temperatures.leastC()) + " and " + Shown.number(temperatures.mostC()) + " C");
    }

    /** Whether uses of it are given. */
    public boolean isUsed() {
        return !uses.isEmpty();
    }

    /** How far the gas cools in its pipe, if its water is to be computed. */
    public Optional<Condensate> condensate() {
        return pipe.map(GasPipe::coolsTo);
    }

    /** Rate at a temperature over the rate at the reference, {@code f(T)/f(T_ref)} (equation 7.3). */
    public double rateFactor(double celsius) {
        return temperatures.relativeRate(celsius) / temperatures.relativeRate(referenceC);
    }
}
