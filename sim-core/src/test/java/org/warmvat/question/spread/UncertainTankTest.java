package org.warmvat.question.spread;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.design.keys.Refused;
import org.warmvat.sample.TankPlan;
import org.warmvat.sampling.Spread;

/** Exact: what a draw makes of a design. */
class UncertainTankTest {

    private static final Design DESIGN = new TankPlan().build();

    private static Uncertain normal(String key, double low, double high, boolean times) {
        return new Uncertain(key, new Spread(low, high, Spread.Shape.NORMAL), times);
    }

    private static UncertainTank.Drawn drawn(Uncertain input, double share) {
        return new UncertainTank(DESIGN, List.of(input)).drawn(share);
    }

    @Test
    void aNumberTakesItsValueOrTheDesignsTimesAFactor() {
        assertEquals(
                3, drawn(normal("solar.area_m2", 1, 3, false), 0.95).design().number("solar.area_m2"), 1e-9);
        assertEquals(
                6, drawn(normal("solar.area_m2", 1, 3, true), 0.95).design().number("solar.area_m2"), 1e-9);
        Uncertain even = new Uncertain("solar.area_m2", new Spread(1, 3, Spread.Shape.EVEN), false);
        assertEquals(1.5, drawn(even, 0.25).design().number("solar.area_m2"), 1e-12);
    }

    @Test
    void allEntriesOfAListHaveTheSameFactor() {
        UncertainTank.Drawn drawn = drawn(normal("feed.feedstocks[].kg_per_day", 0.8, 1.2, true), 0.05);
        assertEquals(4.8, drawn.design().number("feed.feedstocks[0].kg_per_day"), 1e-9);
        assertEquals(3.2, drawn.design().number("feed.feedstocks[1].kg_per_day"), 1e-9);
        assertArrayEquals(new double[] {0.8}, drawn.values(), 1e-9);
    }

    @Test
    void aMaterialThatTheDesignOnlyNamesCanBeDrawn() {
        Uncertain foam = normal("materials.pir_foam.conductivity_w_mk", 0.9, 1.3, true);
        Design drawn = drawn(foam, 0.95).design();
        assertEquals(0.027 * 1.3, drawn.envelope().wall().get(1).material().conductivityWPerMK(), 1e-12);
        assertTrue(UncertainTank.fault(DESIGN, normal("materials.straw_bale.conductivity_w_mk", 0.9, 1.3, true))
                .isPresent());
    }

    /** The key allows 0.01 to 1: what is drawn beyond is held there, and told. */
    @Test
    void aDrawBeyondTheKeysRangeIsHeldAtItsEnd() {
        Uncertain efficiency = normal("mixer.drive_efficiency", 0.5, 1.5, false);
        UncertainTank.Drawn beyond = drawn(efficiency, 0.9);
        assertEquals(1, beyond.design().number("mixer.drive_efficiency"));
        assertTrue(beyond.held()[0]);
        assertTrue(beyond.values()[0] > 1.3, "what was drawn is told: " + beyond.values()[0]);
        assertFalse(drawn(efficiency, 0.4).held()[0]);
        assertEquals(
                4,
                drawn(normal("fittings[3].bar.count", 3, 5.2, false), 0.5)
                        .design()
                        .number("fittings[3].bar.count"));
    }

    @Test
    void gasThatIsHeldHasTheFeedAsTheDesignStatesIt() {
        List<Uncertain> inputs = List.of(
                normal("feed.feedstocks[].methane_nm3_per_kg_vs", 0.8, 1.2, true),
                normal("feed.feedstocks[0].rate_per_day", 0.1, 0.3, false),
                normal("feed.feedstocks[].kg_per_day", 0.8, 1.2, true));
        UncertainTank.Drawn drawn = new UncertainTank(DESIGN, inputs).drawn(0.95, 0.95, 0.95);
        assertEquals(0.42 * 1.2, drawn.design().feed().feedstocks().get(0).methaneNm3PerKgVs(), 1e-9);
        assertEquals(0.42, drawn.asFed().feed().feedstocks().get(0).methaneNm3PerKgVs());
        assertEquals(0.2, drawn.asFed().feed().feedstocks().get(0).ratePerDay());
        assertEquals(7.2, drawn.asFed().feed().feedstocks().get(0).kgPerDay(), 1e-9);
        assertEquals(
                0.42 * 0.8,
                drawn.asFed().at(Estimate.LOW).feed().feedstocks().get(0).methaneNm3PerKgVs(),
                1e-12);
    }

    @Test
    void theWeatherIsWarmerAndSunnier() {
        List<Uncertain> inputs =
                List.of(normal(Uncertain.AIR_OFFSET, -1, 1, false), normal(Uncertain.SUN_FACTOR, 0.9, 1.1, false));
        UncertainTank.Drawn drawn = new UncertainTank(DESIGN, inputs).drawn(0.95, 0.05);
        assertEquals(1, drawn.warmerK(), 1e-9);
        assertEquals(0.9, drawn.sunFactor(), 1e-9);
        assertEquals(DESIGN.number("solar.area_m2"), drawn.design().number("solar.area_m2"), "the tank stays as it is");
    }

    @Test
    void whatIsNoNumberOfTheDesignIsRefused() {
        assertEquals(
                Optional.of("is not a known key, did you mean solar.area_m2?"),
                UncertainTank.fault(DESIGN, normal("solar.aera_m2", 1, 2, false)));
        assertEquals(
                Optional.of("has no place: this design has no such number in any entry"),
                UncertainTank.fault(DESIGN, normal("gas.uses[].kw", 1, 2, false)));
        assertThrows(Refused.class, () -> new UncertainTank(DESIGN, List.of(normal("shelter.volume_m3", 1, 2, true))));
        assertEquals(
                UncertainTank.places(DESIGN, normal("envelope.wall.pir_foam.thickness_mm", 1, 2, false)),
                UncertainTank.places(DESIGN, normal("envelope.wall[1].thickness_mm", 1, 2, false)));
    }
}
