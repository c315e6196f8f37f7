package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import org.warmvat.design.AirDosing;
import org.warmvat.design.CardinalTemperatures;
import org.warmvat.design.Gas;

/** The block {@code gas}. */
record GasKeys(
        @JsonProperty("reference_c")
        @Key(
                says = "Temperature at which the feedstocks' rates hold",
                unit = "C",
                least = -20,
                most = 120,
                usual = "35")
        double referenceC,

        @JsonProperty("methane_fraction")
        @Key(says = "Methane in dry biogas by volume", unit = "Nm3/Nm3", least = 0.3, most = 1, usual = "0.58")
        double methaneFraction,

        @JsonProperty("temperatures_c")
        @Key(says = "Least, best and most temperature of digestion (Rosso et al. 1993)", usual = "{}")
        CardinalKeys temperaturesC,

        @JsonProperty("air_dosing") @Key(says = "Air let in against hydrogen sulphide; leave the block out for none")
        Optional<AirDosingKeys> airDosing,

        @JsonProperty("reaction_heat_kj_per_nm3_methane")
        @Key(
                says = "Heat set free by digestion per Nm3 of methane",
                unit = "kJ/Nm3",
                least = -5000,
                most = 5000,
                usual = "0")
        double reactionHeatKJPerNm3Methane,

        @JsonProperty("heat_capacity_j_m3k")
        @Key(says = "Heat capacity of the leaving gas", unit = "J/m3K", least = 0, most = 5000, usual = "1440")
        double heatCapacityJPerM3K) {

    /** Cardinal temperatures. */
    record CardinalKeys(
            @JsonProperty("least")
            @Key(says = "At and below it nothing grows", unit = "C", least = -20, most = 120, usual = "8")
            double least,

            @JsonProperty("best")
            @Key(
                    says = "Digestion is fastest; must be above the mean of least and most",
                    unit = "C",
                    least = -20,
                    most = 120,
                    usual = "38")
            double best,

            @JsonProperty("most")
            @Key(says = "At and above it nothing grows", unit = "C", least = -20, most = 120, usual = "46")
            double most) {

        void check(Faults faults) {
            double mean = (least + most) / 2;
            if (least >= most) {
                faults.add(
                        "gas.temperatures_c.least",
                        Faults.number(least) + ", expected below most, " + Faults.number(most) + " C");
            } else if (best <= mean || best >= most) {
                faults.add(
                        "gas.temperatures_c.best",
                        Faults.number(best) + ", expected above the mean of least and most, " + Faults.number(mean)
                                + " C, and below most, " + Faults.number(most) + " C");
            }
        }
    }

    /** Air dosing. */
    record AirDosingKeys(
            @JsonProperty("litres_per_hour")
            @Key(
                    says = "Flow while running, at 0 C and 101.325 kPa",
                    unit = "L/h",
                    least = 0,
                    most = 10000,
                    usual = "1.0")
            double litresPerHour,

            @JsonProperty("duty") @Key(says = "Share of the time it runs", least = 0, most = 1, usual = "1.0")
            double duty,

            @JsonProperty("pump_w")
            @Key(says = "Electric power of its pump while running", unit = "W", least = 0, most = 1000, usual = "2")
            double pumpW,

            @JsonProperty("warning_share")
            @Key(
                    says = "Share of air over dry biogas above which an hour is warned of",
                    least = 0,
                    most = 1,
                    usual = "0.06")
            double warningShare) {

        AirDosing dosing() {
            return new AirDosing(litresPerHour, duty, pumpW, warningShare);
        }
    }

    void check(Faults faults) {
        temperaturesC.check(faults);
        if (temperaturesC.least() < temperaturesC.most()
                && (referenceC <= temperaturesC.least() || referenceC >= temperaturesC.most())) {
            faults.add(
                    "gas.reference_c",
                    Faults.number(referenceC) + ", expected between temperatures_c.least and most, "
                            + Faults.number(temperaturesC.least()) + " and " + Faults.number(temperaturesC.most())
                            + " C");
        }
    }

    Gas gas() {
        return new Gas(
                referenceC,
                methaneFraction,
                new CardinalTemperatures(temperaturesC.least(), temperaturesC.best(), temperaturesC.most()),
                airDosing.map(AirDosingKeys::dosing),
                reactionHeatKJPerNm3Methane,
                heatCapacityJPerM3K);
    }
}
