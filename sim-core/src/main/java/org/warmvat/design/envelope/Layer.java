package org.warmvat.design.envelope;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * One layer of wall, lid or base.
 *
 * @param material what it is made of
 * @param thicknessM thickness, m
 * @param statedSubNodes into how many sub-nodes of equal thickness it is cut; absent: by the rules of the envelope (equation 2.2)
 */
public record Layer(
        @Key(name = "material", says = "Name of a material, or its own numbers in its place", beside = true)
        Material material,

        @Key(name = "thickness_mm", says = "Thickness", range = "0.05 to 2000 mm", per = 1000)
        double thicknessM,

        @Key(
                name = "sub_nodes",
                says =
                        "Into how many sub-nodes of equal thickness the layer is cut; absent, 1, or for insulation envelope.insulation_sub_nodes",
                range = "1 to 50")
        Optional<Integer> statedSubNodes) {

    /** Thinner sub-nodes follow their neighbours faster than a ledger can be closed, m. */
    static final double THINNEST_SUB_NODE_M = 0.00005;

    /** Refuses a thickness, a count or sub-nodes out of range. */
    public Layer {
        Ranges.check(Layer.class, material, thicknessM, statedSubNodes);
        int nodes = statedSubNodes.orElse(1);
        Ranges.stated(
                thicknessM >= nodes * THINNEST_SUB_NODE_M,
                "sub_nodes",
                nodes + ", expected sub-nodes at least " + Shown.number(THINNEST_SUB_NODE_M * 1000) + " mm thick");
    }

    /** A layer that says its sub-nodes. */
    public Layer(Material material, double thicknessM, int subNodes) {
        this(material, thicknessM, Optional.of(subNodes));
    }

    /** Into how many sub-nodes it is cut, 1 where it does not say. */
    public int subNodes() {
        return statedSubNodes.orElse(1);
    }

    /** Resistance of one square metre as a plane layer, m2 K/W (equation 2.1). */
    public double planeResistanceM2KPerW() {
        return thicknessM / material.conductivityWPerMK();
    }
}
