package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.surroundings.StandsOn;
import org.warmvat.sample.TankPlan;

/** Exact: the parts add up to the handbook's sums, and a fitting's loss is its conductance times the difference. */
class PartLossTest {

    private static void assertAddsUp(Design design, double airC) {
        List<PartLoss> parts = PartLoss.of(design, 2, airC);
        double sum = parts.stream().mapToDouble(PartLoss::watts).sum();
        double handbook =
                SteadyHeat.lossW(design, Conductances.of(design, 2, airC), airC) + SteadyHeat.feedW(design, airC);
        assertEquals(handbook, sum, 1e-9 * handbook);
        for (int i = 1; i < parts.size(); i++) {
            assertTrue(parts.get(i - 1).watts() >= parts.get(i).watts(), "not ranked: " + parts);
        }
    }

    @Test
    void thePartsAddUpOnLegsAndOnFrozenGround() {
        TankPlan plan = new TankPlan();
        plan.fittings = List.of(new Fitting.Stated("hatch", 0.25), new Fitting.Stated("neck", 0.5));
        assertAddsUp(plan.build(), 9);
        plan.standsOn = StandsOn.GROUND;
        assertAddsUp(plan.build(), -10);
    }

    @Test
    void eachFittingStandsByItself() {
        TankPlan plan = new TankPlan();
        plan.fittings = List.of(new Fitting.Stated("hatch", 0.25));
        Design design = plan.build();
        PartLoss hatch = PartLoss.of(design, 2, 6).stream()
                .filter(part -> part.part().equals("hatch"))
                .findFirst()
                .orElseThrow();
        assertEquals(0.25 * (design.control().setpointC() - 6), hatch.watts(), 1e-12);
    }
}
