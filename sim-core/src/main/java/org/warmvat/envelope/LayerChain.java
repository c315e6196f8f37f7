package org.warmvat.envelope;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;

/**
 * The layers of one envelope part as a chain of sub-nodes from inside to outside (equations 2.1, 2.2; ISO 6946 for plane and
 * ISO 12241 for cylindrical layers).
 *
 * <p>Each sub-node's capacity sits in its middle with half its resistance on each side; the faces between layers hold no heat.
 *
 * @param slices sub-nodes from inside to outside, at least one
 * @param innerAreaM2 inside face, m2
 * @param outerAreaM2 outside face, m2
 */
public record LayerChain(List<Slice> slices, double innerAreaM2, double outerAreaM2) {

    /** A layer this conductive is taken for a metal sheet, W/(m K); common practice, no source. */
    private static final double METAL_W_PER_M_K = 10;

    /**
     * A sub-node.
     *
     * @param resistanceKPerW through the whole of it, K/W
     * @param capacityJPerK heat it holds per kelvin, J/K
     */
    public record Slice(double resistanceKPerW, double capacityJPerK) {}

    /** Copies the slices. */
    public LayerChain {
        slices = List.copyOf(slices);
    }

    /** Plane layers of an area: {@code R = d/(lambda A)}, {@code C = rho c d A}. */
    public static LayerChain plane(List<Layer> layers, double areaM2, EnvelopeRules rules) {
        List<Slice> slices = new ArrayList<>();
        boolean metalBefore = false;
        for (Layer layer : layers) {
            double thicknessM = layer.thicknessM() / layer.subNodes();
            Slice slice = new Slice(
                    thicknessM / (layer.material().conductivityWPerMK() * areaM2),
                    layer.material().heatCapacityJPerM3K() * thicknessM * areaM2);
            metalBefore = add(slices, slice, layer, metalBefore, rules);
        }
        return new LayerChain(slices, areaM2, areaM2);
    }

    /**
     * Cylindrical layers around an upright bore: {@code R = ln(r2/r1)/(2 pi lambda H)}, {@code C = rho c pi (r2^2 - r1^2) H}.
     *
     * @param layers from inside to outside
     * @param boreRadiusM inner radius, m
     * @param heightM height of the stretch, m
     * @param rules when metal sheets are merged
     */
    public static LayerChain cylinder(List<Layer> layers, double boreRadiusM, double heightM, EnvelopeRules rules) {
        List<Slice> slices = new ArrayList<>();
        boolean metalBefore = false;
        double radiusM = boreRadiusM;
        for (Layer layer : layers) {
            double thicknessM = layer.thicknessM() / layer.subNodes();
            for (int i = 0; i < layer.subNodes(); i++) {
                double outerM = radiusM + thicknessM;
                Slice slice = new Slice(
                        Math.log(outerM / radiusM)
                                / (2 * Math.PI * layer.material().conductivityWPerMK() * heightM),
                        layer.material().heatCapacityJPerM3K()
                                * Math.PI
                                * (outerM * outerM - radiusM * radiusM)
                                * heightM);
                metalBefore = addOne(slices, slice, layer, metalBefore, rules);
                radiusM = outerM;
            }
        }
        double turn = 2 * Math.PI * heightM;
        return new LayerChain(slices, turn * boreRadiusM, turn * radiusM);
    }

    private static boolean add(List<Slice> slices, Slice slice, Layer layer, boolean metalBefore, EnvelopeRules rules) {
        boolean metal = metalBefore;
        for (int i = 0; i < layer.subNodes(); i++) {
            metal = addOne(slices, slice, layer, metal, rules);
        }
        return metal;
    }

    /** Appends a slice, or melts it into the one before when both are metal sheets; says whether it is metal. */
    private static boolean addOne(
            List<Slice> slices, Slice slice, Layer layer, boolean metalBefore, EnvelopeRules rules) {
        boolean metal = layer.material().conductivityWPerMK() >= METAL_W_PER_M_K;
        if (metal && metalBefore && rules.mergeMetalSheets()) {
            Slice before = slices.remove(slices.size() - 1);
            slices.add(new Slice(
                    before.resistanceKPerW() + slice.resistanceKPerW(),
                    before.capacityJPerK() + slice.capacityJPerK()));
        } else {
            slices.add(slice);
        }
        return metal;
    }

    /** Resistance of all layers, face to face, K/W. */
    public double resistanceKPerW() {
        return slices.stream().mapToDouble(Slice::resistanceKPerW).sum();
    }

    /**
     * Conductance from what lies inside to the first sub-node, W/K.
     *
     * @param innerFilmWPerM2K film of the inside face, W/(m2 K)
     */
    public double innerWPerK(double innerFilmWPerM2K) {
        return 1 / (1 / (innerFilmWPerM2K * innerAreaM2) + slices.get(0).resistanceKPerW() / 2);
    }

    /** Conductance between a sub-node and the one inside of it, W/K. */
    public double betweenWPerK(int slice) {
        return 2 / (slices.get(slice - 1).resistanceKPerW() + slices.get(slice).resistanceKPerW());
    }

    /** Resistance between the last sub-node and the outside face, K/W. */
    public double outerHalfKPerW() {
        return slices.get(slices.size() - 1).resistanceKPerW() / 2;
    }
}
