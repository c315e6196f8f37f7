package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.RunIn;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.design.heating.BackupSource;
import org.warmvat.design.heating.Coil;
import org.warmvat.design.season.DailySchedule;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.envelope.FittingLoss;
import org.warmvat.network.Warning;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;

/** What a run warns of its circuits and pipes: whole sentences with counts and worst values that closed forms tell. */
class CircuitWarningsTest {

    private static TankPlan plan() {
        TankPlan plan = new TankPlan().quiet();
        plan.runIn = new RunIn.Days(0);
        return plan;
    }

    private static YearResult run(TankPlan plan, Weather weather) throws StudyRefused {
        return YearStudy.run(plan.build(), new Runner(weather, new ReferenceEngine()), HourSink.IGNORE);
    }

    private static List<String> kinds(YearResult result) {
        return result.warnings().stream().map(Warning::key).toList();
    }

    private static Warning of(YearResult result, String kind) {
        return result.warnings().stream()
                .filter(warning -> warning.key().equals(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind + " not among " + kinds(result)));
    }

    /** Without a decimal where they are many, or whole. */
    private static String hours(double hours) {
        return text(hours >= 9.95 || hours == Math.rint(hours) ? "%.0f" : "%.1f", hours);
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /** Even light on a barred pump: the collector stands at 10 °C + x for good; here above the least mark of 50 °C. */
    @Test
    void circuitsAreToldOf() throws StudyRefused {
        Map<Quantity, double[]> columns = InventedWeather.columns(48, hour -> 10);
        columns.put(Quantity.GLOBAL, InventedWeather.filled(48, 1200));
        columns.put(Quantity.DIFFUSE, InventedWeather.filled(48, 1200));
        columns.put(Quantity.BEAM, InventedWeather.filled(48, 0));
        TankPlan plan = plan();
        plan.solar = true;
        YearResult result = run(plan, InventedWeather.of(columns));
        Warning stagnation = of(result, "stagnation");
        assertEquals(
                text(
                        "The collector stood above 110 °C for %s h; the hottest was %.1f °C. Such a loop needs a relief valve"
                                + " and fluid that bears the heat.",
                        hours(stagnation.count()), stagnation.worst()),
                stagnation.sentence());
        // 0.78 x 0.9 x 1200 x 0.8 = 4 x + 0.012 x^2
        double x = (-4 + Math.sqrt(16 + 0.048 * 0.78 * 0.9 * 960)) / 0.024;
        assertEquals(10 + x, stagnation.worst(), 1e-3);
        Warning caking = of(result, "solar_caking");
        assertEquals(
                text(
                        "Water entered the solar coil above 55 °C, where slurry may cake on it, for %s h; the hottest was %.1f"
                                + " °C.",
                        hours(caking.count()), caking.worst()),
                caking.sentence());
    }

    @Test
    void frostInLoopAndPipeIsToldOf() throws StudyRefused {
        TankPlan plan = plan();
        plan.solar = true;
        plan.fittings = List.of(TankPlan.pipe());
        YearResult result = run(plan, InventedWeather.steady(-25, 48));
        Warning loop = of(result, "loop_frozen");
        assertEquals(
                "The solar loop stood below its fluid's freezing point of -20 °C for 48 h; the coldest was -25.0 °C.",
                loop.sentence());
        Warning pipe = of(result, "cold_pipe_end");
        double share =
                FittingLoss.of(TankPlan.pipe(), new FittingLoss.Still(0.6, 10)).tipShare();
        double end = -25 + share * (result.hourly().orZero("slurry_c")[47] + 25);
        assertEquals(
                text(
                        "The coldest end of a slurry pipe stood below 0 °C for 48 h; the coldest was %.1f °C. A frozen outlet"
                                + " blocks.",
                        end),
                pipe.sentence());
        assertEquals(end, pipe.worst(), 1e-6);
    }

    @Test
    void aHotBackupCoilIsToldOf() throws StudyRefused {
        TankPlan plan = plan();
        BackupCircuit.Circuit usual = (BackupCircuit.Circuit)
                TankPlan.circuit(BackupSource.FUEL, 1, 5000, 8).through();
        plan.backup = Optional.of(new BackupCircuit(
                BackupSource.FUEL,
                1,
                5000,
                DailySchedule.continuous(),
                new BackupCircuit.Circuit(
                        new BackupCircuit.FlowTemperature(70, 5, 2),
                        8,
                        0.3,
                        usual.loop(),
                        new Coil(0.8, 100, Optional.of(60.0), 0),
                        55)));
        plan.uninsulated();
        YearResult result = run(plan, InventedWeather.steady(0, 48));
        Warning caking = of(result, "backup_caking");
        assertEquals(
                text(
                        "Water entered the backup coil above 55 °C, where slurry may cake on it, for %s h; the hottest was"
                                + " %.1f °C.",
                        hours(caking.count()), caking.worst()),
                caking.sentence());
        assertTrue(caking.worst() > 65 && caking.worst() < 75, "worst " + caking.worst());
    }
}
