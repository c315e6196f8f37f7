package org.warmvat.question.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;

/** Areas and annuities by hand. */
class PriceTest {

    /** Inner diameter 1.0 m, 1.15 m of slurry, 0.25 m of headspace: wall 4.39823 m2, lid and base 0.785398 m2 each. */
    private static final Design TANK = Design.usual();

    private static final double WALL_M2 = 4.398230;
    private static final double END_M2 = 0.785398;

    @Test
    void insulationIsPricedByTheInnerAreaOfWallLidAndBase() {
        double area = WALL_M2 + 2 * END_M2;
        assertEquals(area * 100 * 0.35, new Price(0, 0, 0.35).of(TANK, Set.of("envelope.insulation_mm")), 1e-3);
        assertEquals(7 + area * 12, new Price(7, 12, 0).of(TANK, Set.of("envelope.insulation")), 1e-4);
        Design lidded = TANK.with("envelope.lid_insulation_mm", 150);
        assertEquals(END_M2 * 150 * 0.35, new Price(0, 0, 0.35).of(lidded, Set.of("envelope.lid_insulation_mm")), 1e-4);
        // a material is priced by the thickness that each part has
        assertEquals(
                0.5 * (100 * (WALL_M2 + END_M2) + 150 * END_M2),
                new Price(0, 0, 0.5).of(lidded, Set.of("envelope.insulation")),
                1e-3);
    }

    @Test
    void collectorsAndCoilsArePricedByTheirOwnArea() {
        Design three = TANK.with("solar.area_m2", 3).with("solar.coil.area_m2", 1.5);
        assertEquals(3 * 320, new Price(0, 320, 0).of(three, Set.of("solar.area_m2", "solar.eta0")), 1e-9);
        assertEquals(1.5 * 90, new Price(0, 90, 0).of(three, Set.of("solar.coil.area_m2")), 1e-9);
        assertEquals(45, new Price(45, 0, 0).of(three, Set.of("backup.rated_w")), 0);
    }

    /** 1000 lent at 3 % are paid back by 15 equal payments; 1/n without interest. */
    @Test
    void theAnnuityPaysBackWithInterest() {
        double payment = 1000 * new Terms(15, 0.03, 0, 0).annuityPerYear();
        double owed = 1000;
        for (int year = 0; year < 15; year++) {
            owed = 1.03 * owed - payment;
        }
        assertEquals(0, owed, 1e-9);
        assertEquals(83.77, payment, 0.005);
        assertEquals(0.1, new Terms(10, 0, 0, 0).annuityPerYear(), 0);
    }
}
