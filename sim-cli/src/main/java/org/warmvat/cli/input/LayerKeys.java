package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;

/** One layer of a wall, lid or floor. */
record LayerKeys(
        @JsonProperty("material") @Key(says = "Name of a material, or its own numbers in its place")
        Optional<MaterialChoice> material,

        @JsonProperty("conductivity_w_mk")
        @Key(says = "Own thermal conductivity, instead of a material", unit = "W/mK", least = 0.002, most = 500)
        Optional<Double> conductivityWPerMK,

        @JsonProperty("density_kg_m3")
        @Key(says = "Own density, instead of a material", unit = "kg/m3", least = 1, most = 20000)
        Optional<Double> densityKgPerM3,

        @JsonProperty("specific_heat_j_kgk")
        @Key(says = "Own specific heat, instead of a material", unit = "J/kgK", least = 100, most = 5000)
        Optional<Double> specificHeatJPerKgK,

        @JsonProperty("thickness_mm") @Key(says = "Thickness", unit = "mm", above = 0, most = 2000)
        double thicknessMm,

        @JsonProperty("sub_nodes")
        @Key(
                says =
                        "Into how many sub-nodes of equal thickness the layer is cut; absent, 1, or for insulation envelope.insulation_sub_nodes",
                least = 1,
                most = 50)
        Optional<Integer> subNodes) {

    /** The material of this layer, where it is complete. */
    Optional<MaterialChoice> choice() {
        if (material.isPresent()
                || conductivityWPerMK.isEmpty()
                || densityKgPerM3.isEmpty()
                || specificHeatJPerKgK.isEmpty()) {
            return material;
        }
        return Optional.of(new MaterialChoice.Own(
                new MaterialKeys(conductivityWPerMK.get(), densityKgPerM3.get(), specificHeatJPerKgK.get())));
    }

    void check(Faults faults, String path, Materials materials) {
        String reason = "the layer's material says it already";
        faults.unwanted(path + ".conductivity_w_mk", conductivityWPerMK, material.isPresent(), reason);
        faults.unwanted(path + ".density_kg_m3", densityKgPerM3, material.isPresent(), reason);
        faults.unwanted(path + ".specific_heat_j_kgk", specificHeatJPerKgK, material.isPresent(), reason);
        faults.needed(
                path + ".material", choice(), true, "or conductivity_w_mk, density_kg_m3 and specific_heat_j_kgk");
        material.ifPresent(m -> materials.check(faults, path + ".material", m));
    }
}
