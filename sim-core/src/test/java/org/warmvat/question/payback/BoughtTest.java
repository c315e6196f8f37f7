package org.warmvat.question.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.design.Shape;
import org.warmvat.sample.TankPlan;

class BoughtTest {

    /** A ring of foam outside the 2 mm shell, and two round sheets. */
    @Test
    void cylinderIsARingAndTwoSheets() {
        TankPlan plan = new TankPlan();
        plan.wall = TankPlan.insulated(0.090);
        double shellM = plan.wall.get(0).thicknessM();
        double inner = 0.5 + shellM;
        double ring = Math.PI * ((inner + 0.09) * (inner + 0.09) - inner * inner) * (1.15 + 0.25);
        Bought bought = Bought.of(plan.build());
        assertEquals(ring + Math.PI / 4 * (0.11 + 0.09), bought.foamM3(), 1e-12);
        assertEquals(2, bought.collectorM2());
    }

    @Test
    void boxIsSixSheets() {
        TankPlan plan = new TankPlan();
        plan.shape = new Shape.Box(1, 0.5, 0);
        plan.solar = false;
        Bought bought = Bought.of(plan.build());
        assertEquals(3 * 1.4 * 0.09 + 0.5 * (0.11 + 0.09), bought.foamM3(), 1e-12);
        assertEquals(0, bought.collectorM2());
    }
}
