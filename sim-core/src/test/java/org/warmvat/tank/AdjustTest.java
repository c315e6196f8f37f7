package org.warmvat.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.heating.BackupPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.KnownRate;
import org.warmvat.network.Node;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.weather.Weather;

/** Exact: each factor of {@code adjust} multiplies what it names and nothing else; steady tanks by hand, in both engines. */
class AdjustTest {

    static List<Engine> engines() {
        return List.of(new ReferenceEngine(), new ExponentialEngine());
    }

    private static KnownRate constant(double watts) {
        return new KnownRate() {
            @Override
            public double at(double timeS) {
                return watts;
            }

            @Override
            public double nextJumpS(double timeS) {
                return Double.POSITIVE_INFINITY;
            }
        };
    }

    /** A tank in a room of 10 °C with one fitting of 1 W/K, heated by a known heat. */
    private static TankPlan inARoom() {
        TankPlan plan = new TankPlan().quiet().indoors(10);
        plan.fittings = List.of(new Fitting.Stated("neck", 1));
        return plan;
    }

    private static double slurryC(Design design, double watts, int hours, double startC, Engine engine) {
        Supplied supplied = Supplied.BY_DESIGN.withBackupHeat(constant(watts));
        TankRun run =
                new Runner(InventedWeather.steady(5, hours), engine).start(design, 0, startC, supplied, Guest.NONE);
        run.over(new Hours(0, hours), HourSink.IGNORE);
        return run.slurryC();
    }

    @Test
    void envelopeAndFittingsMultiplyTheirOwnConductances() {
        Design drawn = new TankPlan().build();
        Conductances before = Conductances.of(drawn, 3, 5);
        Conductances after = Conductances.of(drawn.with("adjust.envelope", 1.3).with("adjust.fittings", 2), 3, 5);
        assertEquals(1.3 * before.wallWPerK(), after.wallWPerK(), 1e-12);
        assertEquals(1.3 * before.dryWallWPerK(), after.dryWallWPerK(), 1e-12);
        assertEquals(1.3 * before.lidWPerK(), after.lidWPerK(), 1e-12);
        assertEquals(1.3 * before.floorWPerK(), after.floorWPerK(), 1e-12);
        assertEquals(1.3 * before.edgesWPerK(), after.edgesWPerK(), 1e-12);
        assertEquals(2 * before.fittingsWPerK(), after.fittingsWPerK(), 1e-12);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void aSteadyTankStandsWhereItsAdjustedLossMeetsItsHeat(Engine engine) {
        Design drawn = inARoom().build();
        Conductances conductances = Conductances.of(drawn, 0, 10);
        double envelope = conductances.totalWPerK() - conductances.fittingsWPerK();
        assertEquals(1, conductances.fittingsWPerK(), 1e-12);
        // a tenth of the capacity: steady after weeks
        Design adjusted =
                drawn.with("adjust.capacity", 0.1).with("adjust.envelope", 1.5).with("adjust.fittings", 2);
        double expectedC = 10 + 100 / (1.5 * envelope + 2);
        assertEquals(expectedC, slurryC(adjusted, 100, 60 * 24, expectedC - 5, engine), 2e-3);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void theSameHeatWarmsASmallerCapacityMore(Engine engine) {
        Design drawn = inARoom().build();
        double joulePerK = 1010 * Math.PI / 4 * 1.15 * 4186;
        assertEquals(joulePerK, drawn.contentsHeatCapacityJPerK(), 1e-6 * joulePerK);
        double drawnK = slurryC(drawn, 5000, 1, 10, engine) - 10;
        double halfK = slurryC(drawn.with("adjust.capacity", 0.5), 5000, 1, 10, engine) - 10;
        // the inner sheet of the wall takes as much of each, which the difference leaves out
        assertEquals(5000 * 3600 / joulePerK, drawnK, 0.02 * drawnK);
        assertEquals(0.5 * joulePerK, 5000 * 3600 * (1 / drawnK - 1 / halfK), 0.005 * joulePerK);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void theBackupCoilPassesItsAdjustedConductance(Engine engine) {
        TankPlan plan = inARoom();
        plan.backup = Optional.of(TankPlan.circuit(BackupSource.ELECTRIC, 1, 500, 8));
        Design design = plan.build().with("adjust.backup_coil", 1.4);
        BackupCircuit.Circuit circuit =
                (BackupCircuit.Circuit) plan.backup.orElseThrow().through();
        double mc = circuit.loop().flowKgPerS() * 4186;
        double e = 1 - Math.exp(-1.4 * circuit.coil().uaWPerK(false) / mc);
        Supplied supplied = new Supplied(
                Optional.empty(),
                Optional.empty(),
                Optional.of(constant(300)),
                Optional.empty(),
                Optional.empty(),
                false);
        TankRun run = new Runner(InventedWeather.steady(5, 24), engine).start(design, 0, 30, supplied, Guest.NONE);
        int meter = run.meter(BackupPart.BACKUP_HEAT);
        int water =
                run.tank().network().nodes().stream().map(Node::name).toList().indexOf(BackupPart.NODE);
        run.over(new Hours(0, 24), hour -> {
            if (hour.hour() == 23) {
                double apartK = hour.state().nodeC(water) - hour.state().nodeC(0);
                assertEquals(hour.meter(meter) / Hours.HOUR_S * (1 - e / 2) / (e * mc), apartK, 2e-3);
            }
            return true;
        });
        assertEquals(
                (circuit.flow().limitC() - 36) * coil(1.4 * circuit.coil().uaWPerK(true), mc),
                DerivedFigures.backupCoilMostW(design).orElseThrow(),
                1e-9);
    }

    private static double coil(double uaWPerK, double mc) {
        double e = 1 - Math.exp(-uaWPerK / mc);
        return e * mc / (1 - e / 2);
    }

    @Test
    void theSolarCoilPassesItsAdjustedConductance() {
        TankPlan plan = new TankPlan();
        double mc = plan.solarCircuit().loop().capacityRateWPerK();
        assertEquals(
                coil(0.7 * plan.solarCoil.uaWPerK(true), mc),
                DerivedFigures.solarCoilWPerK(plan.build().with("adjust.solar_coil", 0.7))
                        .orElseThrow(),
                1e-9);
    }

    @ParameterizedTest
    @MethodSource("engines")
    void theCollectorTakesUpItsAdjustedShareOfTheSun(Engine engine) {
        Weather days = InventedWeather.days(120, 2);
        double drawn = absorbedJ(new TankPlan().build(), days, engine);
        double adjusted = absorbedJ(new TankPlan().build().with("adjust.collector", 0.8), days, engine);
        assertEquals(0.8 * drawn, adjusted, 1e-6 * drawn);
    }

    private static double absorbedJ(Design design, Weather days, Engine engine) {
        TankRun run = new Runner(days, engine).start(design, 0, 36);
        int meter = run.meter(SolarPart.ABSORBED);
        double[] sum = {0};
        run.over(new Hours(0, days.hours()), hour -> {
            sum[0] += hour.meter(meter);
            return true;
        });
        return sum[0];
    }
}
