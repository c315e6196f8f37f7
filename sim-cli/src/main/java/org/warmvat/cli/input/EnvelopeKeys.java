package org.warmvat.cli.input;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.Envelope;
import org.warmvat.design.EnvelopeRules;
import org.warmvat.design.Layer;
import org.warmvat.design.Material;
import org.warmvat.design.OuterFace;

/** The block {@code envelope}. */
record EnvelopeKeys(
        @JsonProperty("wall") @Key(says = "Layers of the wall, from inside to outside", entries = 1)
        Optional<List<LayerKeys>> wall,

        @JsonProperty("lid") @Key(says = "Layers of the lid, from inside to outside", entries = 1)
        Optional<List<LayerKeys>> lid,

        @JsonProperty("floor") @Key(says = "Layers of the floor, from inside to outside", entries = 1)
        Optional<List<LayerKeys>> floor,

        @JsonProperty("shell")
        @Key(
                says = "Material of the shell, instead of the three lists",
                usual = "\"stainless_steel\"",
                when = "wall absent and lid absent and floor absent")
        Optional<MaterialChoice> shell,

        @JsonProperty("shell_mm")
        @Key(
                says = "Thickness of the shell",
                unit = "mm",
                above = 0,
                most = 500,
                usual = "2",
                when = "wall absent and lid absent and floor absent")
        Optional<Double> shellMm,

        @JsonProperty("insulation")
        @Key(
                says = "Material of the insulation outside the shell",
                usual = "\"pir_foam\"",
                when = "wall absent and lid absent and floor absent")
        Optional<MaterialChoice> insulation,

        @JsonProperty("insulation_mm")
        @Key(
                says = "Thickness of the insulation, needed without the three lists; 0 for none",
                unit = "mm",
                least = 0,
                most = 2000)
        Optional<Double> insulationMm,

        @JsonProperty("lid_insulation_mm")
        @Key(
                says = "Thickness of the lid's insulation",
                unit = "mm",
                least = 0,
                most = 2000,
                when = "wall absent and lid absent and floor absent",
                otherwise = "as insulation_mm")
        Optional<Double> lidInsulationMm,

        @JsonProperty("floor_insulation_mm")
        @Key(
                says = "Thickness of the floor's insulation",
                unit = "mm",
                least = 0,
                most = 2000,
                when = "wall absent and lid absent and floor absent",
                otherwise = "as insulation_mm")
        Optional<Double> floorInsulationMm,

        @JsonProperty("outer_absorptance")
        @Key(says = "Share of sunlight the outermost face takes up", least = 0, most = 1, usual = "0.5")
        double outerAbsorptance,

        @JsonProperty("outer_emissivity")
        @Key(says = "Long-wave emissivity of the outermost face", least = 0, most = 1, usual = "0.9")
        double outerEmissivity,

        @JsonProperty("films") @Key(says = "Surface coefficients inside and outside", usual = "{}")
        FilmsKeys films,

        @JsonProperty("insulation_below_w_mk")
        @Key(
                says = "A layer of lower conductivity counts as insulation (sub-nodes, edges)",
                unit = "W/mK",
                least = 0.01,
                most = 1,
                usual = "0.1")
        double insulationBelowWPerMK,

        @JsonProperty("insulation_sub_nodes")
        @Key(says = "Sub-nodes of an insulation layer that does not say its own", least = 1, most = 50, usual = "3")
        int insulationSubNodes,

        @JsonProperty("edge_shape_factor")
        @Key(
                says =
                        "Loss of an edge per its length and foam conductivity, two adjoining walls (Incropera, table 4.1); 0 for no edges",
                least = 0,
                most = 5,
                usual = "0.54")
        double edgeShapeFactor,

        @JsonProperty("merge_metal_sheets")
        @Key(says = "Whether touching metal sheets become one node, their resistance kept", usual = "false")
        boolean mergeMetalSheets,

        @JsonProperty("soil_resistance_m2k_w")
        @Key(
                says = "Resistance between a floor on the ground and the ground's temperature",
                unit = "m2K/W",
                least = 0,
                most = 20,
                usual = "0.5")
        double soilResistanceM2KPerW) {

    private boolean layered() {
        return wall.isPresent() || lid.isPresent() || floor.isPresent();
    }

    void check(Faults faults, Materials materials) {
        String how = "needed beside the other two of wall, lid and floor; or insulation_mm instead of all three";
        faults.needed("envelope.wall", wall, layered(), how);
        faults.needed("envelope.lid", lid, layered(), how);
        faults.needed("envelope.floor", floor, layered(), how);
        faults.needed("envelope.insulation_mm", insulationMm, !layered(), "or wall, lid and floor as lists of layers");
        String reason = "wall, lid and floor are given as layers: give the one or the other";
        faults.unwanted("envelope.shell", shell, layered(), reason);
        faults.unwanted("envelope.shell_mm", shellMm, layered(), reason);
        faults.unwanted("envelope.insulation", insulation, layered(), reason);
        faults.unwanted("envelope.insulation_mm", insulationMm, layered(), reason);
        faults.unwanted("envelope.lid_insulation_mm", lidInsulationMm, layered(), reason);
        faults.unwanted("envelope.floor_insulation_mm", floorInsulationMm, layered(), reason);
        shell.ifPresent(m -> materials.check(faults, "envelope.shell", m));
        insulation.ifPresent(m -> materials.check(faults, "envelope.insulation", m));
        checkLayers(faults, "envelope.wall", wall, materials);
        checkLayers(faults, "envelope.lid", lid, materials);
        checkLayers(faults, "envelope.floor", floor, materials);
    }

    private static void checkLayers(Faults faults, String path, Optional<List<LayerKeys>> layers, Materials materials) {
        List<LayerKeys> list = layers.orElse(List.of());
        for (int i = 0; i < list.size(); i++) {
            list.get(i).check(faults, path + "[" + i + "]", materials);
        }
    }

    Envelope envelope(Materials materials) {
        EnvelopeRules rules =
                new EnvelopeRules(insulationBelowWPerMK, edgeShapeFactor, mergeMetalSheets, soilResistanceM2KPerW);
        return new Envelope(
                part(wall, materials, insulationMm),
                part(lid, materials, lidInsulationMm.or(() -> insulationMm)),
                part(floor, materials, floorInsulationMm.or(() -> insulationMm)),
                new OuterFace(outerAbsorptance, outerEmissivity),
                films.films(),
                rules);
    }

    private List<Layer> part(Optional<List<LayerKeys>> layers, Materials materials, Optional<Double> foamMm) {
        List<Layer> part = new ArrayList<>();
        if (layers.isPresent()) {
            for (LayerKeys layer : layers.get()) {
                Material material = materials.resolve(layer.choice().orElseThrow());
                part.add(layer(material, layer.thicknessMm(), layer.subNodes()));
            }
            return part;
        }
        part.add(layer(materials.resolve(shell.orElseThrow()), shellMm.orElseThrow(), Optional.empty()));
        if (foamMm.orElseThrow() > 0) {
            part.add(layer(materials.resolve(insulation.orElseThrow()), foamMm.get(), Optional.empty()));
        }
        return part;
    }

    private Layer layer(Material material, double thicknessMm, Optional<Integer> subNodes) {
        int usual = material.conductivityWPerMK() < insulationBelowWPerMK ? insulationSubNodes : 1;
        return new Layer(material, thicknessMm / 1000, subNodes.orElse(usual));
    }
}
