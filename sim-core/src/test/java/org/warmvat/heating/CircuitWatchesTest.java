package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.heating.PumpedLoop;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Supply;
import org.warmvat.network.meter.Around;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.season.InForce;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/** Watches of both circuits: water at the coil's inlet against the caking mark, stagnation (equation 5.3). */
class CircuitWatchesTest {
    private static final double HELD_J_PER_K = 1e14;
    private static final double DAY_S = 86_400;

    private static Weather light(double airC, double globalWPerM2) {
        Map<Quantity, double[]> columns = InventedWeather.columns(48, hour -> airC);
        columns.put(Quantity.GLOBAL, InventedWeather.filled(48, globalWPerM2));
        columns.put(Quantity.DIFFUSE, InventedWeather.filled(48, globalWPerM2));
        columns.put(Quantity.BEAM, InventedWeather.filled(48, 0));
        return InventedWeather.of(columns);
    }

    private static OnePart solar(TankPlan plan, Weather weather, double slurryC) {
        Design design = plan.build();
        CollectorSun sun =
                new CollectorSun(weather, design.solar().orElseThrow().collector(), Shading.NONE, 0.2);
        return OnePart.run(
                HELD_J_PER_K,
                weather,
                slurryC,
                (surroundings, around, assembly) -> new SolarPart(
                        design, sun, surroundings, new InForce(design, surroundings, assembly), () -> true, assembly),
                new ReferenceEngine());
    }

    /** Collector area at which the circuit settles at a temperature over a slurry of 30 °C in an even light of 224.64 W/m2. */
    private static TankPlan settlingAt(double meanC, double conductance) {
        double x = meanC - 10;
        TankPlan plan = new TankPlan();
        plan.collectorM2 = (conductance * (meanC - 30) + 0.8 * x) / (0.78 * 0.9 * 320 - 3.6 * x - 0.012 * x * x);
        return plan;
    }

    /** It is the inlet that cakes, not the mean: 52 °C over 30 °C stands above 55 °C at the inlet, 48 °C does not. */
    @Test
    void theSolarCoilsInletIsWatched() {
        TankPlan plan = new TankPlan();
        double g = new CoilFlow(plan.solarCoil, 1, 0.04 * 3700).conductanceWPerK(true);
        assertTrue(52 + g * 22 / (2 * 0.04 * 3700) > 55);
        OnePart hot = solar(settlingAt(52, g), light(10, 400), 30);
        assertEquals(52, hot.circuitC(), 1e-4);
        assertTrue(hot.heldS(SolarPart.SOLAR_CAKING) > 1.5 * DAY_S);
        assertTrue(48 + g * 18 / (2 * 0.04 * 3700) < 55);
        OnePart mild = solar(settlingAt(48, g), light(10, 400), 30);
        assertEquals(48, mild.circuitC(), 1e-4);
        assertEquals(0, mild.heldS(SolarPart.SOLAR_CAKING));
        assertEquals(0, mild.heldS(SolarPart.STAGNATION));
    }

    /** With the pump barred nothing flows through the coil, however hot the collector; above 110 °C it stagnates. */
    @Test
    void aStagnatingCollectorIsCountedAndCakesNothing() {
        OnePart run = solar(new TankPlan(), light(58, 500), 99);
        assertTrue(run.circuitC() > 110);
        assertTrue(run.heldS(SolarPart.STAGNATION) > 1.5 * DAY_S);
        assertEquals(0, run.heldS(SolarPart.SOLAR_CAKING));
    }

    private static OnePart backup(double cakingC) {
        TankPlan plan = new TankPlan();
        plan.backup = Optional.of(new BackupCircuit(
                BackupSource.ELECTRIC,
                1,
                2000,
                DailySchedule.continuous(),
                new BackupCircuit.Circuit(
                        new BackupCircuit.FlowTemperature(90, 5, 2),
                        8,
                        0,
                        new PumpedLoop(0.05, 15),
                        new Coil(0.8, 100, Optional.of(60.0), 0),
                        cakingC)));
        Design design = plan.build();
        return OnePart.run(
                HELD_J_PER_K,
                InventedWeather.steady(10, 48),
                20,
                (surroundings, around, assembly) -> new BackupPart(
                        design,
                        surroundings,
                        Around.uncounted(around),
                        new InForce(design, surroundings, assembly),
                        Supply.BOUGHT,
                        () -> true,
                        assembly),
                new ReferenceEngine());
    }

    /** All of 2000 W through the coil without other loss: mean 20 + 2000/g, inlet 2000/(2 m c) above it. */
    @Test
    void theBackupCoilsInletIsWatched() {
        double capacityRate = 0.05 * 4186;
        double g = new CoilFlow(new Coil(0.8, 100, Optional.of(60.0), 0), 1, capacityRate).conductanceWPerK(true);
        double inletC = 20 + 2000 / g + 2000 / (2 * capacityRate);
        assertTrue(backup(inletC - 0.01).heldS(BackupPart.BACKUP_CAKING) > 1.5 * DAY_S);
        assertEquals(0, backup(inletC + 0.01).heldS(BackupPart.BACKUP_CAKING));
    }
}
