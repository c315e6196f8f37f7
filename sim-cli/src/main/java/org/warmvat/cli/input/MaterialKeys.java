package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.warmvat.design.Material;

/** A material's own numbers. */
record MaterialKeys(
        @JsonProperty("conductivity_w_mk")
        @Key(says = "Thermal conductivity, aged and as damp as it will be", unit = "W/mK", least = 0.002, most = 500)
        double conductivityWPerMK,

        @JsonProperty("density_kg_m3") @Key(says = "Density", unit = "kg/m3", least = 1, most = 20000)
        double densityKgPerM3,

        @JsonProperty("specific_heat_j_kgk") @Key(says = "Specific heat", unit = "J/kgK", least = 100, most = 5000)
        double specificHeatJPerKgK) {

    Material named(String name) {
        return new Material(name, conductivityWPerMK, densityKgPerM3, specificHeatJPerKgK);
    }
}
