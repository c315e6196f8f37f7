package org.warmvat.question.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.tank.Shape;
import org.warmvat.sample.TankPlan;

class PurchaseTest {

    /** A ring of foam outside the 2 mm shell, and two round sheets. */
    @Test
    void cylinderIsARingAndTwoSheets() {
        TankPlan plan = new TankPlan();
        plan.wall = TankPlan.insulated(0.090);
        double shellM = plan.wall.get(0).thicknessM();
        double inner = 0.5 + shellM;
        double ring = Math.PI * ((inner + 0.09) * (inner + 0.09) - inner * inner) * (1.15 + 0.25);
        Purchase bought = Purchase.of(plan.build());
        assertEquals(ring + Math.PI / 4 * (0.11 + 0.09), bought.foamM3(), 1e-12);
        assertEquals(2, bought.collectorM2());
    }

    @Test
    void boxIsSixSheets() {
        TankPlan plan = new TankPlan();
        plan.shape = new Shape.Box(1, 0.5, 0);
        plan.solar = false;
        Purchase bought = Purchase.of(plan.build());
        assertEquals(3 * 1.4 * 0.09 + 0.5 * (0.11 + 0.09), bought.foamM3(), 1e-12);
        assertEquals(0, bought.collectorM2());
    }

    /** Insulation 250, collector 300 per m2, coils 120 per m2, heater 80 per kW, tank 1000 per m3, by hand. */
    @Test
    void coilsHeaterAndTankHaveTheirPrices() {
        Design design = Design.usual();
        Purchase bought = Purchase.of(design);
        assertEquals(1.8, bought.coilM2(), 1e-12);
        assertEquals(0.5, bought.heaterKw(), 1e-12);
        double m3 = Math.PI / 4 * 1.15;
        assertEquals(m3, bought.tankM3(), 1e-12);
        assertEquals(250 * bought.foamM3() + 2 * 300 + 1.8 * 120 + 0.5 * 80 + 1000 * m3, bought.outlay(design), 1e-9);
        double wider = Purchase.of(design.with("solar.coil.area_m2", 3)).outlay(design);
        assertEquals(2 * 120, wider - bought.outlay(design), 1e-9);
    }
}
