package org.warmvat.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.meter.Around;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;

/** All fittings as one loss, out of doors and in a room, and the watch on the coldest end of a pipe (equation 2.7). */
class FittingsPartTest {
    private static final double HELD_J_PER_K = 1e14;
    private static final double DAY_S = 86_400;

    private static OnePart day(TankPlan plan, double airC) {
        Design design = plan.build();
        return OnePart.run(
                design,
                HELD_J_PER_K,
                InventedWeather.steady(airC, 24),
                36,
                (surroundings, around, assembly) -> FittingsPart.add(design, Around.uncounted(around), assembly),
                new ReferenceEngine());
    }

    private static TankPlan with(Fitting... fittings) {
        TankPlan plan = new TankPlan();
        plan.fittings = List.of(fittings);
        return plan;
    }

    @Test
    void aDaysLossOfStatedFittings() {
        OnePart run = day(with(new Fitting.Stated("hatch", 0.5), new Fitting.Stated("neck", 0.25)), -4);
        assertEquals(-0.75 * 40 * DAY_S, run.total(FittingsPart.FITTINGS), 1);
    }

    @Test
    void indoorsTheRoomCountsNotTheAir() {
        OnePart run = day(with(new Fitting.Stated("hatch", 0.5)).indoors(16), -4);
        assertEquals(-0.5 * 20 * DAY_S, run.total(FittingsPart.FITTINGS), 1);
    }

    /** The pipe's end stands at T_a + share (T_s - T_a): it freezes below T_a = -36 share/(1 - share). */
    @Test
    void theColdestEndFreezesAtItsOwnAirTemperature() {
        Fitting.Pipe pipe = TankPlan.pipe();
        double share = FittingLoss.of(pipe, new FittingLoss.Still(0.6, 10)).tipShare();
        double freezingAirC = -36 * share / (1 - share);
        TankPlan plan = with(pipe, new Fitting.Stated("hatch", 0.5));
        assertEquals(DAY_S, day(plan, freezingAirC - 0.01).heldS(FittingsPart.COLD_PIPE_END), 1e-6);
        assertEquals(0, day(plan, freezingAirC + 0.01).heldS(FittingsPart.COLD_PIPE_END));
        assertTrue(share > 0 && share < 1);
    }

    @Test
    void withoutPipesNothingIsWatched() {
        OnePart run = day(with(new Fitting.Stated("hatch", 0.5)), -4);
        assertThrows(IndexOutOfBoundsException.class, () -> run.heldS(FittingsPart.COLD_PIPE_END));
    }
}
