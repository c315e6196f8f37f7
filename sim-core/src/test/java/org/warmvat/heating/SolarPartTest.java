package org.warmvat.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.heating.HighLimit;
import org.warmvat.design.heating.PumpControl;
import org.warmvat.design.surroundings.Shading;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.OnePart;
import org.warmvat.sample.TankPlan;
import org.warmvat.season.InForce;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/** The solar circuit by itself: stagnation, coil, pump control, ledger of the collector (equations 5.1 to 5.3). */
class SolarPartTest {
    private static final double HELD_J_PER_K = 1e14;

    /** The same diffuse light every hour, day and night, on a sky without beam: 400 W/m2 level, air at 10 °C. */
    private static Weather evenLight(int hours) {
        Map<Quantity, double[]> columns = InventedWeather.columns(hours, hour -> 10);
        columns.put(Quantity.GLOBAL, InventedWeather.filled(hours, 400));
        columns.put(Quantity.DIFFUSE, InventedWeather.filled(hours, 400));
        columns.put(Quantity.BEAM, InventedWeather.filled(hours, 0));
        return InventedWeather.of(columns);
    }

    private static OnePart run(TankPlan plan, Weather weather, double slurryC, double capacity) {
        Design design = plan.build();
        CollectorSun sun =
                new CollectorSun(weather, design.solar().orElseThrow().collector(), Shading.NONE, 0.2);
        return OnePart.run(
                capacity,
                weather,
                slurryC,
                (surroundings, around, assembly) -> new SolarPart(
                        design, sun, surroundings, new InForce(design, surroundings, assembly), () -> true, assembly),
                new ReferenceEngine());
    }

    /** On 60° of tilt an even sky gives 400 (1 + cos 60°)/2 and the ground 0.2 x 400 (1 - cos 60°)/2: 320 W/m2. */
    @Test
    void evenLightFallsOnTheTiltedPlane() {
        TankPlan plan = new TankPlan();
        OnePart run = run(plan, evenLight(24), 99, HELD_J_PER_K);
        assertEquals(320 * 24 * 3600.0, run.total(SolarPart.PLANE_IRRADIATION), 1);
        assertEquals(2 * 0.78 * 0.9 * 320 * 24 * 3600, run.total(SolarPart.ABSORBED), 5);
    }

    /**
     * Stagnation with the pump barred by a slurry that is hotter: {@code eta0 Kd G = a1 x + a2 x^2 + UA_pipe x/A}, here 224.64 = 4 x +
     * 0.012 x^2 W/m2, x = (-4 + sqrt(16 + 4 x 0.012 x 224.64))/0.024 = 48.98 K.
     */
    @Test
    void theCollectorStagnatesWhereItsLossesMeetTheSun() {
        OnePart run = run(new TankPlan(), evenLight(48), 99, HELD_J_PER_K);
        double x = (-4 + Math.sqrt(16 + 4 * 0.012 * 0.78 * 0.9 * 320)) / 0.024;
        assertEquals(10 + x, run.circuitC(), 1e-5);
        assertEquals(0, run.starts(SolarPart.SOLAR_PUMP));
        assertEquals(0, run.total(SolarPart.SOLAR_HEAT));
        assertEquals(0, run.total("solar_pump_electricity"));
    }

    /** With the pump on the circuit settles where sun = losses + g (T_c - T_s); slurry held at 20 °C. */
    @Test
    void withThePumpOnTheCoilTakesTheRest() {
        TankPlan plan = new TankPlan();
        OnePart run = run(plan, evenLight(48), 20, HELD_J_PER_K);
        double g = new CoilFlow(plan.solarCoil, 1, 148).conductanceWPerK(true);
        double sun = 2 * 0.78 * 0.9 * 320;
        // 0.024 x^2 + (8 + g) x - (sun + 10 g) = 0 for x above the air, 10 K below the slurry
        double b = 8 + g;
        double x = (-b + Math.sqrt(b * b + 4 * 0.024 * (sun + 10 * g))) / 0.048;
        assertEquals(10 + x, run.circuitC(), 1e-5);
        assertEquals(g * (x - 10) * 3600, run.byHour(SolarPart.SOLAR_HEAT)[40], 0.1);
        assertEquals(1, run.starts(SolarPart.SOLAR_PUMP));
        assertEquals(12 * 3600, run.byHour("solar_pump_electricity")[40], 1e-6);
    }

    /** In minus out is what collector and loop (2 x 7000 + 9000 J/K) have stored since they stood at 0 °C. */
    @Test
    void theCollectorsOwnBalanceCloses() {
        OnePart run = run(new TankPlan(), evenLight(30), 20, 2e6);
        double stored = 23_000 * run.circuitC();
        double in =
                run.total(SolarPart.ABSORBED) + run.total(SolarPart.COLLECTOR_AIR) - run.total(SolarPart.SOLAR_HEAT);
        assertEquals(stored, in, 1e-6 * run.total(SolarPart.ABSORBED));
        assertEquals(2e6 * (run.slurryC() - 20), run.total(SolarPart.SOLAR_HEAT), 1);
    }

    /** At the high limit the pump stops and does not start again until the slurry has cooled by 1 K, which here it cannot. */
    @Test
    void theHighLimitStopsThePumpForGood() {
        TankPlan plan = new TankPlan();
        plan.pumpControl = new PumpControl(8, 1.5, new HighLimit.At(36.4), 1, 95);
        OnePart run = run(plan, evenLight(72), 36 - 1, 1e6);
        assertEquals(36.4, run.slurryC(), 1e-6);
        assertEquals(1, run.starts(SolarPart.SOLAR_PUMP));
        // between limit less 1 K and limit nothing starts
        assertEquals(36, run(plan, evenLight(24), 36, 1e6).slurryC(), 1e-12);
    }

    /** A collector already above the start bar is not dumped through the coil; a lower bar keeps it out for ever. */
    @Test
    void aStagnatingCollectorIsNotStarted() {
        TankPlan plan = new TankPlan();
        // the collector passes 20 °C, the least that may be chosen, while the slurry is still too warm for a start
        plan.pumpControl = new PumpControl(8, 1.5, new HighLimit.At(39.5), 1, 20);
        OnePart run = run(plan, evenLight(24), 18, HELD_J_PER_K);
        assertEquals(0, run.starts(SolarPart.SOLAR_PUMP));
        plan.pumpControl = new PumpControl(8, 1.5, new HighLimit.At(39.5), 1, 30);
        assertEquals(1, run(plan, evenLight(24), 18, HELD_J_PER_K).starts(SolarPart.SOLAR_PUMP));
    }

    /** Where the coil takes more than the sun gives, the pump goes off at 1.5 K and on again at 8 K: it cycles. */
    @Test
    void thePumpCyclesBetweenItsDifferences() {
        TankPlan plan = new TankPlan();
        plan.solarCoil = new Coil(4, 800, Optional.of(800.0), 0);
        OnePart run = run(plan, evenLight(24), 55, HELD_J_PER_K);
        assertEquals(0, run.starts(SolarPart.SOLAR_PUMP));
        OnePart warm = run(plan, evenLight(24), 37, HELD_J_PER_K);
        assertTrue(warm.starts(SolarPart.SOLAR_PUMP) > 20, "starts " + warm.starts(SolarPart.SOLAR_PUMP));
        double heated = warm.total(SolarPart.SOLAR_HEAT);
        // every stroke gives what the loop held between 8 K and 1.5 K and what the sun gave meanwhile
        assertTrue(heated > warm.starts(SolarPart.SOLAR_PUMP) * 23_000 * 6.4, "heat " + heated);
    }

    /** Hours of stagnation, frost and hot inlets are counted to the second. */
    @Test
    void conditionsOfTheLoopAreTimed() {
        TankPlan plan = new TankPlan();
        Map<Quantity, double[]> columns = InventedWeather.columns(24, hour -> -30);
        OnePart frozen = run(plan, InventedWeather.of(columns), 20, HELD_J_PER_K);
        // linear and quadratic loss of 23000 J/K from 0 °C towards -30 °C; passes -20 °C after 30 K has become 10 K:
        // dx/dt = -(8 x + 0.024 x^2)/23000, so t = 23000/8 ln[x0 (8 + 0.024 x)/(x (8 + 0.024 x0))]
        double t = 23_000 / 8.0 * Math.log(30 * (8 + 0.024 * 10) / (10 * (8 + 0.024 * 30)));
        assertEquals(24 * 3600 - t, frozen.heldS(SolarPart.LOOP_FROZEN), 0.01);
        assertEquals(0, frozen.heldS(SolarPart.STAGNATION));
        assertEquals(0, frozen.heldS(SolarPart.SOLAR_CAKING));
    }
}
