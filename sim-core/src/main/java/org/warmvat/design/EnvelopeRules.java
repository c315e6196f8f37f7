package org.warmvat.design;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Conventions by which layers become nodes and edges.
 *
 * @param insulationBelowWPerMK a layer whose conductivity is below this counts as insulation, W/(m K), 0.01..1 (equations 2.2, 2.8)
 * @param edgeShapeFactor conductance of an edge per its length and conductivity, 0..5 (0.54 for two adjoining walls; equation 2.8)
 * @param mergeMetalSheets whether touching metal sheets become one node, their link resistance kept (equation 2.2)
 * @param soilResistanceM2KPerW resistance between a floor on the ground and the ground temperature, m2 K/W, 0..20 (equation 2.5)
 */
public record EnvelopeRules(
        double insulationBelowWPerMK, double edgeShapeFactor, boolean mergeMetalSheets, double soilResistanceM2KPerW) {

    /** Refuses numbers out of range. */
    public EnvelopeRules {
        Ranges.within("conductivity below which a layer is insulation in W/mK", insulationBelowWPerMK, 0.01, 1);
        Ranges.within("edge shape factor", edgeShapeFactor, 0, 5);
        Ranges.within("soil resistance in m2K/W", soilResistanceM2KPerW, 0, 20);
    }

    /** Whether a layer counts as insulation. */
    public boolean isInsulation(Layer layer) {
        return layer.material().conductivityWPerMK() < insulationBelowWPerMK;
    }

    /** The layer of greatest resistance among those that insulate; empty when none does. */
    public Optional<Layer> mainInsulation(List<Layer> layers) {
        return layers.stream()
                .filter(this::isInsulation)
                .max(Comparator.comparingDouble(Layer::planeResistanceM2KPerW));
    }
}
