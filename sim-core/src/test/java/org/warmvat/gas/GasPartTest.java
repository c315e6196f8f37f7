package org.warmvat.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.DigestionRate;
import org.warmvat.design.feeding.Feedstock;
import org.warmvat.design.feeding.MethanePotential;
import org.warmvat.design.gas.AirDosing;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.season.InForce;

/** Digestion in a mixed tank against closed forms (equations 3.4, 7.1 to 7.4). */
class GasPartTest {
    private static final double HELD_J_PER_K = 1e14;

    private static TankPlan one(double reactionHeat) {
        TankPlan plan = new TankPlan();
        plan.feedstocks = List.of(new Feedstock(
                Optional.empty(), "scraps", 10, 0.2, 0.9, MethanePotential.ofNumber(0.4), DigestionRate.ofNumber(0.2)));
        plan.gas = Optional.of(new Gas(
                35,
                0.6,
                plan.gas.orElseThrow().temperatures(),
                Optional.of(new AirDosing(5, 0.4, 3, 0.06)),
                reactionHeat,
                1440,
                Optional.empty(),
                List.of(),
                Optional.empty()));
        return plan;
    }

    private static OnePart run(TankPlan plan, boolean open, double slurryC, int hours, double capacity, Engine engine) {
        Design design = plan.build();
        return OnePart.run(
                capacity,
                InventedWeather.steady(10, hours),
                slurryC,
                (surroundings, around, assembly) -> new GasPart(
                        design, surroundings, new InForce(design, surroundings, assembly), () -> open, assembly),
                engine);
    }

    /** Fed continuously at set-point the solids stay where they are and the methane is B0 VS k HRT/(1 + k HRT) a day. */
    @Test
    void steadyDigestionIsTheClassicForm() {
        TankPlan plan = one(0);
        plan.feedTimes = DailySchedule.continuous();
        Design design = plan.build();
        double k = 0.2 * design.gas().orElseThrow().rateFactor(36);
        double hrt = design.retentionDays();
        assertEquals(0.9032079 * 1010 / 20, hrt, 1e-5);
        for (Engine engine : new Engine[] {new ReferenceEngine(), new ExponentialEngine()}) {
            OnePart run = run(plan, true, 36, 48, HELD_J_PER_K, engine);
            double perDay = 0.4 * 1.8 * k * hrt / (1 + k * hrt);
            assertEquals(2 * perDay, run.total(GasPart.METHANE), 1e-8);
            double solids = 1.8 / design.tank().liquidVolumeM3() * hrt / (1 + k * hrt);
            assertEquals(solids, run.stock(), 1e-8);
        }
    }

    /** Unfed the solids decay as exp(-k t), and the methane is what they lost. */
    @Test
    void unfedSolidsDecayToMethane() {
        TankPlan plan = one(0);
        Design design = plan.build();
        double k = 0.2 * design.gas().orElseThrow().rateFactor(30);
        double start = 1.8
                / design.tank().liquidVolumeM3()
                / (1 / design.retentionDays() + 0.2 * design.gas().orElseThrow().rateFactor(36));
        OnePart run = run(plan, false, 30, 96, HELD_J_PER_K, new ReferenceEngine());
        double end = start * Math.exp(-4 * k);
        assertEquals(end, run.stock(), 1e-9 * start);
        double lost = (start - end) * design.tank().liquidVolumeM3();
        assertEquals(0.4 * lost, run.total(GasPart.METHANE), 1e-8);
        OnePart fast = run(plan, false, 30, 96, HELD_J_PER_K, new ExponentialEngine());
        assertEquals(end, fast.stock(), 1e-5 * start);
        assertEquals(0.4 * lost, fast.total(GasPart.METHANE), 1e-4 * lost);
    }

    /** Fed for a window a day the total gain is the day's solids: what is not digested or washed out is there. */
    @Test
    void aDaysSolidsAreAccountedFor() {
        TankPlan plan = one(0);
        // at 5 °C nothing grows: solids only come in and wash out, open all the time at the window's eightfold flow
        Design design = plan.build();
        double volume = design.tank().liquidVolumeM3();
        double washoutPerS = 20 / 10_800.0 / design.contentsKg();
        OnePart run = run(plan, true, 5, 3, HELD_J_PER_K, new ReferenceEngine());
        double start = 1.8
                / volume
                / (1 / design.retentionDays() + 0.2 * design.gas().orElseThrow().rateFactor(36));
        double settles = 1.8 / 20 * design.contentsKg() / volume;
        double expected = settles + (start - settles) * Math.exp(-washoutPerS * 10_800);
        assertEquals(expected, run.stock(), 1e-9);
        assertEquals(0, run.total(GasPart.METHANE));
        assertEquals(0, run.total(GasPart.GAS_HEAT));
    }

    /** Heat carried off is the dry biogas times the heat of a normal cubic metre; reaction heat is methane times its figure. */
    @Test
    void heatGoesWithTheGas() {
        TankPlan plan = one(250);
        plan.feedTimes = DailySchedule.continuous();
        OnePart run = run(plan, true, 36, 24, HELD_J_PER_K, new ReferenceEngine());
        double methane = run.total(GasPart.METHANE);
        assertTrue(methane > 0.5 && methane < 1);
        assertEquals(-methane / 0.6 * GasVapour.heatJPerNm3(36, 10, 100_000, 1440), run.total(GasPart.GAS_HEAT), 1e-3);
        assertEquals(methane * 250_000, run.total(GasPart.REACTION_HEAT), 1e-3);
    }

    /** Gas that cools a small slurry: what the meters say is what the slurry lost. */
    @Test
    void theSlurrysBalanceClosesInBothEngines() {
        for (Engine engine : new Engine[] {new ReferenceEngine(), new ExponentialEngine()}) {
            OnePart run = run(one(-40), true, 36, 48, 2e5, engine);
            double received = run.total(GasPart.GAS_HEAT) + run.total(GasPart.REACTION_HEAT);
            assertTrue(run.slurryC() < 35, "slurry " + run.slurryC());
            // the fast engine meters a curved heat along the slope it last took
            assertEquals(2e5 * (run.slurryC() - 36), received, 1e-6 * 2e5);
        }
    }

    /** 5 L/h at a duty of 0.4 is 0.002 Nm3/h; the pump's 3 W at that duty runs all the time. */
    @Test
    void dosedAirAndItsPumpFollowTheDuty() {
        assertEquals(0.002, GasPart.dosedAirNm3PerH(new AirDosing(5, 0.4, 3, 0.06)), 1e-15);
        OnePart run = run(one(0), false, 36, 10, HELD_J_PER_K, new ReferenceEngine());
        assertEquals(1.2 * 36_000, run.total("air_pump_electricity"), 1e-6);
    }

    /** Feedstocks add up: two halves of one are the same as the whole. */
    @Test
    void feedstocksAddUp() {
        TankPlan halves = one(0);
        halves.feedstocks = List.of(
                new Feedstock(
                        Optional.empty(),
                        "one",
                        5,
                        0.2,
                        0.9,
                        MethanePotential.ofNumber(0.4),
                        DigestionRate.ofNumber(0.2)),
                new Feedstock(
                        Optional.empty(),
                        "other",
                        5,
                        0.2,
                        0.9,
                        MethanePotential.ofNumber(0.4),
                        DigestionRate.ofNumber(0.2)));
        double whole =
                run(one(0), true, 36, 24, HELD_J_PER_K, new ReferenceEngine()).total(GasPart.METHANE);
        double both =
                run(halves, true, 36, 24, HELD_J_PER_K, new ReferenceEngine()).total(GasPart.METHANE);
        assertEquals(whole, both, 1e-9);
    }

    /** ISO 6976, rounded: 35.8 MJ of a normal cubic metre are 9.944 kWh. */
    @Test
    void methaneHoldsItsHeatingValue() {
        assertEquals(9.944, GasEnergy.METHANE_J_PER_NM3 / 3.6e6, 5e-4);
    }
}
