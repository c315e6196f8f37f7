package org.warmvat.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.envelope.EnvelopeRules;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;

/** Layers as chains against resistances and capacities by hand (equations 2.1, 2.2). */
class LayerChainTest {
    private static final EnvelopeRules APART = new EnvelopeRules(0.1, 3, 0.54, false, 0.5);
    private static final EnvelopeRules MERGED = new EnvelopeRules(0.1, 3, 0.54, true, 0.5);
    private static final Material STEEL = new Material("steel", 17, 7900, 460);
    private static final Material FOAM = new Material("foam", 0.028, 32, 1400);
    private static final Material SHEET = new Material("sheet", 160, 2800, 880);
    /** Rounding of a few sums. */
    private static final double EXACT = 1e-12;

    private static double capacity(LayerChain chain) {
        return chain.slices().stream()
                .mapToDouble(LayerChain.Slice::capacityJPerK)
                .sum();
    }

    /** 2 mm steel and 90 mm foam over 1.5 m2: 0.002/(17 x 1.5) + 0.09/(0.028 x 1.5) = 2.142936 K/W. */
    @Test
    void aCompositePlaneWallByHand() {
        List<Layer> layers = List.of(new Layer(STEEL, 0.002, 1), new Layer(FOAM, 0.09, 3));
        LayerChain chain = LayerChain.plane(layers, 1.5, APART);
        assertEquals(2.142936, chain.resistanceKPerW(), 5e-7);
        assertEquals(4, chain.slices().size());
        // 7900 x 460 x 0.003 m3 + 32 x 1400 x 0.135 m3
        assertEquals(10_902 + 6048, capacity(chain), 1e-9);
        assertEquals(1.5, chain.innerAreaM2());
        assertEquals(1.5, chain.outerAreaM2());
    }

    /**
     * A tank's side of 100 mm foam on 1.0 m bore, 1.3 m high, outer film 8 W/m2K: 1.215530 W/K, and each end of the bore's area
     * 0.212475 W/K (worked out independently).
     */
    @Test
    void aCylindersSideAndEndsByHand() {
        List<Layer> foam = List.of(new Layer(FOAM, 0.1, 3));
        LayerChain side = LayerChain.cylinder(foam, 0.5, 1.3, APART);
        LayerChain end = LayerChain.plane(foam, Math.PI / 4, APART);
        assertEquals(2 * Math.PI * 0.5 * 1.3, side.innerAreaM2(), EXACT);
        assertEquals(2 * Math.PI * 0.6 * 1.3, side.outerAreaM2(), EXACT);
        assertEquals(1.215530, 1 / (side.resistanceKPerW() + 1 / (8 * side.outerAreaM2())), 5e-7);
        assertEquals(0.212475, 1 / (end.resistanceKPerW() + 1 / (8 * end.outerAreaM2())), 5e-7);
    }

    /** However finely a cylinder is cut, resistance and capacity of the whole stay: ln and r2^2 - r1^2 telescope. */
    @Test
    void cuttingChangesNeitherResistanceNorCapacity() {
        for (int cuts : new int[] {1, 2, 7, 50}) {
            LayerChain chain = LayerChain.cylinder(List.of(new Layer(FOAM, 0.1, cuts)), 0.5, 1.3, APART);
            assertEquals(Math.log(1.2) / (2 * Math.PI * 0.028 * 1.3), chain.resistanceKPerW(), EXACT);
            assertEquals(32 * 1400 * Math.PI * (0.36 - 0.25) * 1.3, capacity(chain), 1e-8);
            assertEquals(cuts, chain.slices().size());
        }
    }

    /** Outer slices of a cylinder hold more and resist less than inner ones. */
    @Test
    void slicesOfACylinderGrowOutwards() {
        List<LayerChain.Slice> slices = LayerChain.cylinder(List.of(new Layer(FOAM, 0.3, 3)), 0.3, 1, APART)
                .slices();
        assertEquals(Math.log(4.0 / 3) / (2 * Math.PI * 0.028), slices.get(0).resistanceKPerW(), EXACT);
        assertEquals(Math.log(6.0 / 5) / (2 * Math.PI * 0.028), slices.get(2).resistanceKPerW(), EXACT);
        assertEquals(11.0 / 7, slices.get(2).capacityJPerK() / slices.get(0).capacityJPerK(), EXACT);
    }

    /** A thin shell on a wide bore is as good as plane: they differ by half the thickness over the radius. */
    @Test
    void aWideCylinderIsNearlyPlane() {
        List<Layer> layers = List.of(new Layer(FOAM, 0.01, 1));
        LayerChain round = LayerChain.cylinder(layers, 10, 1, APART);
        LayerChain flat = LayerChain.plane(layers, 2 * Math.PI * 10, APART);
        assertEquals(1 - 0.0005, round.resistanceKPerW() / flat.resistanceKPerW(), 1e-6);
    }

    /** Half of each neighbour between middles; film and half a slice at the ends; together the whole. */
    @Test
    void conductancesBetweenMiddlesAddUpToTheWhole() {
        List<Layer> layers = List.of(new Layer(STEEL, 0.002, 1), new Layer(FOAM, 0.09, 3), new Layer(SHEET, 0.001, 1));
        LayerChain chain = LayerChain.plane(layers, 2, APART);
        double sum = 1 / chain.innerWPerK(100) + chain.outerHalfKPerW();
        for (int i = 1; i < chain.slices().size(); i++) {
            sum += 1 / chain.betweenWPerK(i);
        }
        assertEquals(1 / (100.0 * 2) + chain.resistanceKPerW(), sum, EXACT);
    }

    /** Touching metal sheets become one node with both capacities and both resistances; foam between them keeps them apart. */
    @Test
    void touchingMetalSheetsMergeWhereTheRulesSaySo() {
        List<Layer> layers = List.of(
                new Layer(STEEL, 0.002, 1),
                new Layer(SHEET, 0.001, 2),
                new Layer(FOAM, 0.05, 1),
                new Layer(SHEET, 0.001, 1));
        LayerChain apart = LayerChain.plane(layers, 1, APART);
        LayerChain merged = LayerChain.plane(layers, 1, MERGED);
        assertEquals(5, apart.slices().size());
        assertEquals(3, merged.slices().size());
        assertEquals(apart.resistanceKPerW(), merged.resistanceKPerW(), EXACT);
        assertEquals(capacity(apart), capacity(merged), 1e-9);
        assertEquals(
                7900 * 460 * 0.002 + 2800 * 880 * 0.001, merged.slices().get(0).capacityJPerK(), 1e-9);
    }
}
