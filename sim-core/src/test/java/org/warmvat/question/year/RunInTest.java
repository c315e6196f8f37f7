package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.RunIn;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.envelope.EnvelopePart;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Lines;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** How a year is run in (model section 10). */
class RunInTest {
    private static final Weather YEAR = WeatherFiles.demonstration();

    /** An engine that writes down what it is asked to run. */
    private static final class Told implements Engine {
        private final List<Hours> hours = new ArrayList<>();
        private final List<Double> startC = new ArrayList<>();
        private final Engine fast = new ExponentialEngine();

        @Override
        public String name() {
            return "told";
        }

        @Override
        public void run(Network network, State state, Hours span, HourSink sink) {
            hours.add(span);
            startC.add(state.nodeC(0));
            fast.run(network, state, span, sink);
        }
    }

    private static TankPlan plan(RunIn runIn) {
        TankPlan plan = new TankPlan();
        plan.runIn = runIn;
        return plan;
    }

    /** Three time constants C_s/UA in days, rounded up; 10 at least, 90 at most. */
    @Test
    void threeTimeConstantsWithinTheirBounds() {
        Design design = new TankPlan().build();
        double ua =
                Conductances.of(design, YEAR.meanWindMPerS(), YEAR.meanAirC()).totalWPerK();
        double days = 3 * design.contentsHeatCapacityJPerK() / ua / 86_400;
        assertEquals((int) Math.ceil(days), Runner.runInDays(design, YEAR));
        assertTrue(days > 10 && days < 90, "days " + days);
        assertEquals(10, Runner.runInDays(new TankPlan().uninsulated().build(), YEAR));
        TankPlan thick = new TankPlan().quiet();
        thick.wall = TankPlan.insulated(0.4);
        thick.lid = TankPlan.insulated(0.4);
        thick.floor = TankPlan.insulated(0.4);
        assertEquals(90, Runner.runInDays(thick.build(), YEAR));
    }

    @Test
    void statedDaysWinButNoFileIsRunInForLongerThanItIs() {
        assertEquals(33, Runner.runInDays(plan(new RunIn.Days(33)).build(), YEAR));
        assertEquals(0, Runner.runInDays(plan(new RunIn.Days(0)).build(), YEAR));
        Weather week = InventedWeather.days(95, 7);
        assertEquals(7, Runner.runInDays(plan(new RunIn.Days(33)).build(), week));
    }

    /** A whole year is run in over its last days, December before January, and then runs whole. */
    @Test
    void aWholeYearIsRunInOverItsLastDays() throws StudyRefused {
        Told engine = new Told();
        YearStudy.run(plan(new RunIn.Days(2)).build(), new Runner(YEAR, engine), HourSink.IGNORE);
        assertEquals(List.of(new Hours(8760 - 48, 8760), new Hours(0, 8760)), engine.hours);
        assertEquals(36, engine.startC.get(0));
    }

    /** A part year is run in over its first days and the clock goes back, every state kept. */
    @Test
    void aPartYearIsRunInOverItsFirstDays() throws StudyRefused {
        Told engine = new Told();
        Weather fortnight = InventedWeather.days(95, 14);
        YearResult result =
                YearStudy.run(plan(new RunIn.Days(4)).build(), new Runner(fortnight, engine), HourSink.IGNORE);
        assertEquals(List.of(new Hours(0, 96), new Hours(0, 336)), engine.hours);
        assertEquals(4, result.runInDays());
        // the year went on from the state at the end of the run-in
        assertEquals(result.days().get(0).of(KeyFigures.LEAST_C), Math.min(36, engine.startC.get(1)), 3);
        assertTrue(engine.startC.get(1) != 36);
    }

    /** Without a run-in the tank starts at the set-point with the envelope steady against the first instant. */
    @Test
    void withoutRunInTheTankStartsAtItsSetpoint() throws StudyRefused {
        Told engine = new Told();
        Weather week = InventedWeather.days(95, 7);
        YearStudy.run(plan(new RunIn.Days(0)).build(), new Runner(week, engine), HourSink.IGNORE);
        assertEquals(List.of(new Hours(0, 0), new Hours(0, 168)), engine.hours);
        assertEquals(36, engine.startC.get(1));
    }

    /** In steady weather a tank that only loses heat is in equilibrium from the first hour: its envelope stores nothing. */
    @Test
    void theEnvelopeStartsInEquilibrium() throws StudyRefused {
        TankPlan quiet = new TankPlan().quiet();
        quiet.depthM = 20;
        quiet.runIn = new RunIn.Days(0);
        YearResult result = YearStudy.run(
                quiet.build(), new Runner(InventedWeather.steady(5, 1), new ExponentialEngine()), HourSink.IGNORE);
        double lost = Lines.lossKWh(result.whole());
        // within the hour the slurry itself cools by 0.03 K of 31 K
        assertEquals(Conductances.of(quiet.build(), 0, 5).totalWPerK() * 31 / 1000, lost, 5e-4 * lost);
        // and the steel of this tall tank with it
        assertEquals(0, result.whole().of(EnvelopePart.STORED), 0.01 * lost);
    }
}
