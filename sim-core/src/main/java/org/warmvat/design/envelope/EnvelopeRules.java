package org.warmvat.design.envelope;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Conventions by which layers become nodes and edges.
 *
 * @param insulationBelowWPerMK a layer whose conductivity is below this counts as insulation, W/(m K) (equations 2.2, 2.8)
 * @param insulationSubNodes sub-nodes of an insulation layer that does not say its own (equation 2.2)
 * @param edgeShapeFactor conductance of an edge per its length and conductivity (0.54 for two adjoining walls; equation 2.8)
 * @param mergeMetalSheets whether touching metal sheets become one node, their link resistance kept (equation 2.2)
 * @param soilResistanceM2KPerW resistance between a base on the ground and the ground temperature, m2 K/W (equation 2.5)
 */
public record EnvelopeRules(
        @Key(
                name = "insulation_below_w_mk",
                says = "A layer of lower conductivity counts as insulation (sub-nodes, edges)",
                range = "0.01 to 1 W/mK",
                usual = "0.1")
        double insulationBelowWPerMK,

        @Key(
                name = "insulation_sub_nodes",
                says = "Sub-nodes of an insulation layer that does not say its own",
                range = "1 to 50",
                usual = "3")
        int insulationSubNodes,

        @Key(
                name = "edge_shape_factor",
                says =
                        "Loss of an edge per its length and the insulation's conductivity, two adjoining walls (Incropera, table 4.1); 0 for no edges",
                range = "0 to 5",
                usual = "0.54")
        double edgeShapeFactor,

        @Key(
                name = "merge_metal_sheets",
                says = "Whether touching metal sheets become one node, their resistance kept",
                usual = "false")
        boolean mergeMetalSheets,

        @Key(
                name = "soil_resistance_m2k_w",
                says = "Resistance between a base on the ground and the ground's temperature",
                range = "0 to 20 m2K/W",
                usual = "0.5")
        double soilResistanceM2KPerW) {

    /** Refuses numbers out of range. */
    public EnvelopeRules {
        Ranges.check(
                EnvelopeRules.class,
                insulationBelowWPerMK,
                insulationSubNodes,
                edgeShapeFactor,
                mergeMetalSheets,
                soilResistanceM2KPerW);
    }

    /** Whether a layer counts as insulation. */
    public boolean isInsulation(Layer layer) {
        return layer.material().conductivityWPerMK() < insulationBelowWPerMK;
    }

    /** The layers with the sub-nodes that these rules give those that do not say their own. */
    List<Layer> cut(List<Layer> layers) {
        return layers.stream().map(this::cut).toList();
    }

    private Layer cut(Layer layer) {
        int finest = Math.max(1, (int) (layer.thicknessM() / Layer.THINNEST_SUB_NODE_M));
        int usual = isInsulation(layer) ? Math.min(insulationSubNodes, finest) : 1;
        return layer.statedSubNodes().isPresent() ? layer : new Layer(layer.material(), layer.thicknessM(), usual);
    }

    /** The layer of greatest resistance among those that insulate; empty when none does. */
    public Optional<Layer> mainInsulation(List<Layer> layers) {
        return layers.stream()
                .filter(this::isInsulation)
                .max(Comparator.comparingDouble(Layer::planeResistanceM2KPerW));
    }
}
