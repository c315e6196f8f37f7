package org.warmvat.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.network.Network;
import org.warmvat.network.Surroundings;
import org.warmvat.network.meter.Balance;
import org.warmvat.network.meter.Line;
import org.warmvat.network.meter.Meter;
import org.warmvat.network.meter.Unit;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.year.BriefYear;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/**
 * A consumer of electricity and a node with its own balance that live only here are found, without a word about them anywhere else, in
 * the figures of {@code summary.json}, the columns of tables, the balances, the consumers that the chart stacks, the hourly table, the
 * outputs of {@code vary} and the net energy.
 */
class GuestsInTheAccountTest {

    /** Twelve days across the end of January. */
    private static final Weather WEATHER = InventedWeather.days(24, 12);

    private static final Design DESIGN = new TankPlan().build();
    private static final double LAMP_W = 25;
    private static final double LAMP_KWH = 12 * 24 * LAMP_W / 1000;
    private static final Balance BARREL = new Balance("barrel", "Water barrel", Unit.KWH);
    private static final Line TO_BARREL = new Line("barrel_kwh/from_tank", "to the barrel", Unit.KWH);
    private static final Line LOST = new Line("barrel_kwh/lost", "lost by the barrel", Unit.KWH);
    private static final Line STORED = new Line("stored_kwh/barrel", "stored, barrel", Unit.KWH);
    private static final double BARREL_J_PER_K = 2e5;

    private static void join(Network.Assembly assembly, Surroundings surroundings) {
        assembly.source(Network.NOWHERE, assembly.meter(Meter.electricity("lamp", "lamp")))
                .set(LAMP_W);
        int barrel = assembly.room("barrel", BARREL_J_PER_K, 20);
        assembly.exchange(
                barrel,
                Network.SLURRY,
                0.5,
                assembly.meter(Meter.of("barrel_heat")
                        .told(TO_BARREL)
                        .posted(BARREL, 1)
                        .posted(Balance.SLURRY, -1)));
        assembly.exchange(
                barrel,
                surroundings.air(),
                0.2,
                assembly.meter(Meter.of("barrel_air").told(-1, LOST).leaving(BARREL, 1)));
        assembly.declare().store(barrel, BARREL_J_PER_K, STORED, BARREL);
        assembly.declare().hourlyC(barrel, "barrel_c");
    }

    private static Runner runner() {
        return new Runner(WEATHER, new ExponentialEngine(), GuestsInTheAccountTest::join);
    }

    private static YearResult run(Runner runner) throws StudyRefused {
        return YearStudy.run(DESIGN, runner, HourSink.IGNORE);
    }

    @Test
    void theyStandInJsonAndTables() throws StudyRefused {
        Period whole = run(runner()).whole();
        Map<?, ?> electricity = (Map<?, ?>) whole.figures().get("electricity_kwh");
        assertEquals(LAMP_KWH, (double) electricity.get("lamp"), 1e-9);
        Map<?, ?> barrel = (Map<?, ?>) whole.figures().get("barrel_kwh");
        assertTrue((double) barrel.get("from_tank") > 1, barrel.toString());
        List<String> columns = whole.books().lines().stream().map(Line::column).toList();
        assertEquals(columns.indexOf("electricity_electronics_kwh") + 1, columns.indexOf("electricity_lamp_kwh"));
        assertTrue(columns.containsAll(List.of("barrel_from_tank_kwh", "barrel_lost_kwh", "stored_barrel_kwh")));
        assertTrue(columns.contains("ledger_barrel_residual_kwh"));
    }

    @Test
    void theyCountInSumsAndBalances() throws StudyRefused {
        Period alone = run(new Runner(WEATHER, new ExponentialEngine())).whole();
        Period whole = run(runner()).whole();
        assertEquals(alone.of(Meter.ELECTRICITY) + LAMP_KWH, whole.of(Meter.ELECTRICITY), 0.2);
        assertTrue(whole.of(KeyFigures.NET) < alone.of(KeyFigures.NET) - LAMP_KWH, "lamp and barrel cost");
        Ledger barrel = whole.books().ledger(BARREL).orElseThrow();
        assertEquals(
                List.of("to the barrel", "lost by the barrel", "stored, barrel"),
                barrel.items().stream().map(item -> item.line().name()).toList());
        assertEquals(0, whole.of(BARREL.residual()), 1e-6);
        assertEquals(whole.of(TO_BARREL) - whole.of(LOST), whole.of(STORED), 1e-6);
        assertTrue(whole.of(Books.RESIDUAL_FRACTION) < 1e-6);
        assertTrue(alone.books().ledger(BARREL).isEmpty());
    }

    @Test
    void theyAreDrawnAndWrittenHourByHour() throws StudyRefused {
        YearResult run = run(runner());
        List<String> consumers = run.whole().books().lines().stream()
                .filter(Meter::isConsumer)
                .map(Line::name)
                .toList();
        assertTrue(consumers.contains("lamp"), consumers.toString());
        assertEquals(12 * 24, run.hourly().column("barrel_c").orElseThrow().length);
        assertTrue(
                run.hourly().names().contains("barrel_c"), run.hourly().names().toString());
        double[] other = run.hourly().orZero(Meter.OTHER_ELECTRIC_W);
        assertTrue(DoubleStream.of(other).min().orElseThrow() >= LAMP_W - 1e-9, "the lamp burns all the time");
    }

    @Test
    void theyAreOutputsOfASweep() throws StudyRefused {
        Runner runner = runner();
        Outputs outputs = new Outputs(runner.books(DESIGN));
        double[] values = outputs.of(DESIGN, BriefYear.run(DESIGN, runner), 0);
        assertEquals(LAMP_KWH, values[outputs.names().indexOf("electricity_lamp_kwh")], 1e-9);
        assertTrue(values[outputs.names().indexOf("barrel_lost_kwh")] > 0);
        assertFalse(new Outputs(new Runner(WEATHER, new ExponentialEngine()).books(DESIGN))
                .names()
                .contains("barrel_lost_kwh"));
    }

    /** Heat that is posted nowhere is missing, and then there is no answer. */
    @Test
    void aBalanceThatDoesNotCloseIsNoAnswer() {
        Runner leaking = new Runner(
                WEATHER,
                new ExponentialEngine(),
                (assembly, surroundings) -> assembly.exchange(
                        Network.SLURRY, surroundings.air(), 1, assembly.meter(Meter.of("forgotten"))));
        String message = assertThrows(LedgerOpen.class, () -> run(leaking)).getMessage();
        assertTrue(message.startsWith("the balance of the slurry with envelope does not close in 2025-01: "), message);
        assertThrows(LedgerOpen.class, () -> BriefYear.run(DESIGN, leaking));
    }
}
