package org.warmvat.design;

/**
 * One layer of wall, lid or floor.
 *
 * @param material what it is made of
 * @param thicknessM thickness, m, above 0 and up to 2
 * @param subNodes into how many sub-nodes of equal thickness it is cut, 1..50 (equation 2.2)
 */
public record Layer(Material material, double thicknessM, int subNodes) {

    /** Refuses a thickness or a count out of range. */
    public Layer {
        Ranges.above("thickness of " + material.name() + " in m", thicknessM, 0, 2);
        Ranges.within("sub-nodes of " + material.name(), subNodes, 1, 50);
    }

    /** Resistance of one square metre as a plane layer, m2 K/W (equation 2.1). */
    public double planeResistanceM2KPerW() {
        return thicknessM / material.conductivityWPerMK();
    }
}
