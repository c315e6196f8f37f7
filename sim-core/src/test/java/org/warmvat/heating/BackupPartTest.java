package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.season.DailyWindow;
import org.warmvat.engine.Engine;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Margin;
import org.warmvat.network.Supply;
import org.warmvat.network.meter.Around;
import org.warmvat.network.meter.Watched;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.season.InForce;

/** The backup by itself: permitted hours, thermostat, flow limit, overrun, the coil's batch heating (equations 6.1 to 6.4). */
class BackupPartTest {
    private static final double HELD_J_PER_K = 1e14;

    private static OnePart run(TankPlan plan, int hours, double airC, double slurryC, double capacity, Engine engine) {
        Design design = plan.build();
        return OnePart.run(
                capacity,
                InventedWeather.steady(airC, hours),
                slurryC,
                (surroundings, around, assembly) -> new BackupPart(
                        design,
                        surroundings,
                        Around.uncounted(around),
                        new InForce(design, surroundings, assembly),
                        Supply.BOUGHT,
                        () -> true,
                        assembly),
                engine);
    }

    private static TankPlan with(BackupCircuit backup) {
        TankPlan plan = new TankPlan();
        plan.backup = Optional.of(backup);
        return plan;
    }

    /** A slurry that stays cold calls all the time: an element gives exactly its power for exactly the permitted time. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void permittedTimeIsCountedExactly(int which) {
        Engine engine = which == 0 ? new ReferenceEngine() : new ExponentialEngine();
        DailySchedule night = DailySchedule.of(List.of(
                new DailyWindow(22 * 3600, 8 * 3600),
                new DailyWindow(5 * 3600, 2 * 3600),
                new DailyWindow(46_801, 17)));
        OnePart run = run(with(TankPlan.immersed(700, night)), 72, 10, 20, HELD_J_PER_K, engine);
        double seconds = 3 * (9 * 3600.0 + 17);
        assertEquals(700 * seconds, run.total(BackupPart.BACKUP_HEAT), 1e-4);
        assertEquals(700 * seconds, run.total(BackupPart.BACKUP_POWER), 1e-4);
        assertEquals(0, run.byHour(BackupPart.BACKUP_HEAT)[8]);
        assertEquals(1, run.starts(BackupPart.DEMAND));
    }

    /** Demand is remembered through barred hours: reached at 36.5 °C only, not forgotten at the window's edge. */
    @Test
    void demandOutlivesTheWindow() {
        TankPlan plan = with(TankPlan.immersed(1000, TankPlan.window(0, 1)));
        // 1 K an hour from 35 °C: 36 °C when the window closes, 36.5 °C half an hour into the next day's
        OnePart run = run(plan, 48, 10, 35, 3.6e6, new ReferenceEngine());
        assertEquals(36.5, run.slurryC(), 1e-6);
        assertEquals(0.5 * 3.6e6, run.byHour(BackupPart.BACKUP_HEAT)[24], 1);
        assertEquals(1, run.starts(BackupPart.DEMAND));
    }

    /** Between 35.5 and 36.5 °C a thermostat that starts off stays off; at 35.5 °C it goes on. */
    @Test
    void theBandIsHalfEitherSide() {
        TankPlan plan = with(TankPlan.immersed(1000, DailySchedule.continuous()));
        assertEquals(
                0, run(plan, 5, 10, 35.51, HELD_J_PER_K, new ReferenceEngine()).starts(BackupPart.DEMAND));
        assertEquals(
                1, run(plan, 5, 10, 35.5, HELD_J_PER_K, new ReferenceEngine()).starts(BackupPart.DEMAND));
    }

    /**
     * Calling for ever into slurry held at 30 °C the water settles where {@code P (50 - T_b)/5 = g (T_b - 30) + 0.3 (T_b - 10)}, in
     * the band below the limit, or at full power below it.
     */
    @Test
    void theFlowLimitThrottlesThePower() {
        BackupCircuit backup = TankPlan.circuit(BackupSource.FUEL, 0.8, 5000, 8);
        OnePart run = run(with(backup), 24, 10, 30, HELD_J_PER_K, new ReferenceEngine());
        double g = new CoilFlow(new Coil(0.8, 100, Optional.of(60.0), 0.0005), 1, 0.05 * 4186).conductanceWPerK(true);
        double water = (1000 * 50 + g * 30 + 0.3 * 10) / (1000 + g + 0.3);
        assertTrue(water > 45 && water < 50);
        assertEquals(water, run.circuitC(), 1e-5);
        assertEquals(g * (water - 30) * 3600, run.byHour(BackupPart.BACKUP_HEAT)[20], 1);
        assertEquals(1000 * (50 - water) * 3600, run.byHour(BackupPart.BACKUP_POWER)[20], 1);
        assertEquals(-0.3 * (water - 10) * 3600, run.byHour(BackupPart.BACKUP_AROUND)[20], 0.1);
        assertEquals(15 * 3600, run.byHour("backup_pump_electricity")[20], 1e-6);
        OnePart weak = run(
                with(TankPlan.circuit(BackupSource.FUEL, 0.8, 500, 8)),
                24,
                10,
                30,
                HELD_J_PER_K,
                new ExponentialEngine());
        assertEquals((500 + g * 30 + 3) / (g + 0.3), weak.circuitC(), 1e-4);
        assertEquals(500 * 3600, weak.byHour(BackupPart.BACKUP_POWER)[20], 1e-6);
    }

    /** Water colder than the slurry is not pumped: the circuit starts at 36 °C, slurry held at 34 °C, water cooled before the call. */
    @Test
    void coldWaterIsWarmedBeforeItIsPumped() {
        TankPlan plan = with(new BackupCircuit(
                BackupSource.ELECTRIC,
                1,
                500,
                TankPlan.window(12, 12),
                TankPlan.circuit(BackupSource.ELECTRIC, 1, 500, 8).through()));
        OnePart run = run(plan, 14, -20, 34, HELD_J_PER_K, new ReferenceEngine());
        double capacity = 8 * 4186;
        double atNoon = -20 + 56 * Math.exp(-0.3 * 12 * 3600 / capacity);
        // up to 34 °C by 500 W less the loss, no pump meanwhile
        double settles = -20 + 500 / 0.3;
        double warmingS = capacity / 0.3 * Math.log((settles - atNoon) / (settles - 34));
        assertTrue(warmingS < 3600 && warmingS > 600, "warming " + warmingS);
        double pumpedS = run.byHour("backup_pump_electricity")[12] / 15;
        assertEquals(3600 - warmingS, pumpedS, 1e-3);
        assertEquals(1, run.starts(BackupPart.BACKUP_PUMP));
    }

    /** At the window's end the pump overruns until the water is 2 K above the slurry, past the edge, and then stops. */
    @Test
    void thePumpOverrunsPastTheWindow() {
        BackupCircuit circuit = TankPlan.circuit(BackupSource.ELECTRIC, 1, 500, 40);
        TankPlan plan =
                with(new BackupCircuit(BackupSource.ELECTRIC, 1, 500, TankPlan.window(0, 20), circuit.through()));
        OnePart run = run(plan, 23, 30, 30, HELD_J_PER_K, new ReferenceEngine());
        double g = new CoilFlow(new Coil(0.8, 100, Optional.of(60.0), 0.0005), 1, 0.05 * 4186).conductanceWPerK(true);
        double capacity = 40 * 4186;
        // air as warm as the slurry: both conductances pull alike; steady at 500/(g + 0.3) when the window closes
        double atEdge = 500 / (g + 0.3);
        double overrunS = capacity / (g + 0.3) * Math.log(atEdge / 2);
        assertTrue(overrunS < 3600, "overrun " + overrunS);
        assertEquals(overrunS, run.byHour("backup_pump_electricity")[20] / 15, 0.01);
        assertEquals(0, run.byHour("backup_pump_electricity")[21]);
        assertEquals(0, run.byHour(BackupPart.BACKUP_POWER)[20]);
    }

    /** Power less losses less heat given is what the water stored, whatever the switches did. */
    @Test
    void theCircuitsOwnBalanceCloses() {
        TankPlan plan = with(TankPlan.circuit(BackupSource.ELECTRIC, 1, 800, 20));
        OnePart run = run(plan, 60, 0, 30, 4e6, new ReferenceEngine());
        double stored = 20 * 4186 * (run.circuitC() - 36);
        double in = run.total(BackupPart.BACKUP_POWER)
                + run.total(BackupPart.BACKUP_AROUND)
                - run.total(BackupPart.BACKUP_HEAT);
        assertEquals(stored, in, 1e-6 * run.total(BackupPart.BACKUP_POWER));
        assertEquals(4e6 * (run.slurryC() - 30), run.total(BackupPart.BACKUP_HEAT), 10);
    }

    /**
     * Batch heating through a coil from water at a steady inlet: {@code ln((T1 - t1)/(T1 - t2)) = (w c/M C)((K - 1)/K) t}, {@code K =
     * exp(UA/w c)} (Kern's non-isothermal medium, formula as seen in lecture notes): 1000 kg, 4180 J/kgK, 0.1 kg/s at 60 °C, UA 300
     * W/K, 10 to 37 °C in 15 162.77 s.
     */
    @Test
    void theCoilHeatsABatchAsTheClosedFormSays() {
        CoilFlow coil = new CoilFlow(new Coil(1, 300, Optional.of(300.0), 0), 1, 418);
        double g = coil.conductanceWPerK(true);
        OnePart run = OnePart.run(
                4.18e6,
                InventedWeather.steady(10, 5),
                10,
                (surroundings, around, assembly) -> {
                    // the mean stands midway, T_m - T_s = (60 - T_s)(1 - e/2): g on it is an exchange of g (1 - e/2)
                    // with 60 °C
                    double fromInletWPerK = g * (1 - coil.effectiveness(true) / 2);
                    assembly.exchange(0, assembly.known("inlet", 60), fromInletWPerK, assembly.meter("heat"));
                    assembly.watch(Watched.of("below 37"), Margin.below(0, 37));
                },
                new ReferenceEngine());
        assertEquals(15_162.77, run.heldS("below 37"), 0.01);
    }
}
