package org.warmvat.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.envelope.Layer;
import org.warmvat.design.envelope.Material;
import org.warmvat.design.tank.Shape;
import org.warmvat.sample.TankPlan;

/** Edges by hand (equation 2.8). */
class EdgesTest {

    /** A cylinder of 1 m: 0.54 x 0.027 x pi each at floor and lid. */
    @Test
    void aCylinderHasTwoRims() {
        Edges edges = Edges.of(new TankPlan().build());
        assertEquals(0.54 * 0.027 * Math.PI, edges.wetWPerK(), 1e-15);
        assertEquals(0.54 * 0.027 * Math.PI, edges.dryWPerK(), 1e-15);
    }

    /** A box of 1.2 m x 0.8 m adds four corners, wet 1.15 m and dry 0.25 m of them. */
    @Test
    void aBoxAddsItsCorners() {
        TankPlan plan = new TankPlan();
        plan.shape = new Shape.Box(1.2, 0.8, 0);
        Edges edges = Edges.of(plan.build());
        assertEquals(0.54 * 0.027 * (4 + 4 * 1.15), edges.wetWPerK(), 1e-15);
        assertEquals(0.54 * 0.027 * (4 + 4 * 0.25), edges.dryWPerK(), 1e-15);
    }

    @Test
    void whereEitherPartHasNoFoamThereIsNoEdge() {
        TankPlan plan = new TankPlan();
        plan.lid = TankPlan.bare();
        assertEquals(0, Edges.of(plan.build()).dryWPerK());
        assertEquals(0.54 * 0.027 * Math.PI, Edges.of(plan.build()).wetWPerK(), 1e-15);
        plan = new TankPlan();
        plan.wall = TankPlan.bare();
        plan.shape = new Shape.Box(1, 1, 0);
        assertEquals(new Edges(0, 0), Edges.of(plan.build()));
    }

    /** The main insulation is the layer of greatest resistance, not the thickest or the best. */
    @Test
    void theLayerOfGreatestResistanceCounts() {
        Material straw = new Material("straw_bale", 0.065, 110, 1600);
        TankPlan plan = new TankPlan();
        // 0.2/0.065 = 3.08 m2K/W of straw against 0.05/0.027 = 1.85 of foam; timber at 0.13 is no insulation
        plan.wall = List.of(
                new Layer(new Material("timber", 0.13, 500, 1600), 0.5, 1),
                new Layer(TankPlan.PIR, 0.05, 3),
                new Layer(straw, 0.2, 3));
        assertEquals(0.54 * 0.065 * Math.PI, Edges.of(plan.build()).wetWPerK(), 1e-15);
    }
}
