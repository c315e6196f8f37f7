package org.warmvat.question.spread;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.feeding.Estimate;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.Figures;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.BriefYear;
import org.warmvat.sample.StudyTank;
import org.warmvat.sample.TankPlan;
import org.warmvat.sampling.Quantiles;
import org.warmvat.sampling.Share;
import org.warmvat.sampling.Spread;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.Runner;
import org.warmvat.weather.WeatherYear;

/**
 * Exact: a tank whose net energy is a straight line in the one or two inputs that are drawn, so that bands, chances and indices are known
 * beforehand.
 */
class SpreadStudyTest {

    private static final int DAYS = 12;
    private static final double CONTROLS_W = 3;
    private static final ExponentialEngine ENGINE = new ExponentialEngine();
    private static final List<WeatherYear> MILD =
            List.of(new WeatherYear("mild", StudyTank.from(LocalDateTime.of(2025, 4, 1, 0, 0), DAYS, 12, 500)));

    private static Design design;
    private static double netKWh;

    @BeforeAll
    static void runAsDrawn() throws Exception {
        design = new TankPlan().build();
        netKWh = BriefYear.run(design, new Runner(MILD.get(0).weather(), ENGINE))
                .year()
                .of(KeyFigures.NET);
    }

    private static Uncertain even(String key, double low, double high) {
        return new Uncertain(key, new Spread(low, high, Spread.Shape.EVEN), false);
    }

    private static SpreadResult result(SpreadStudy study, int threads) {
        List<Figures> runs = new ArrayList<>();
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            parallel.each(study.runs(), study::run, runs::add);
        }
        return study.result(runs);
    }

    /** The controls take electricity and give the tank nothing: net energy falls by their power times the hours. */
    private static double controlsWAt(double net) {
        return CONTROLS_W + (netKWh - net) * 1000 / (24 * DAYS);
    }

    @Test
    void bandAndChanceOfAStraightLineAreKnown() throws Exception {
        double middle = controlsWAt(0);
        double most = 0.6 * middle;
        UncertainTank tank = new UncertainTank(
                design, List.of(even("control.electronics_w", middle - 0.3 * most, middle + 0.7 * most)));
        SpreadResult found = result(new SpreadStudy(tank, MILD, ENGINE, 64, 1), 2);
        Quantiles net = found.figures().get("net_energy_kwh");
        double span = most * 24 * DAYS / 1000;
        assertEquals((0.3 - 0.95) * span, net.p5(), 0.02 * span);
        assertEquals((0.3 - 0.5) * span, net.p50(), 0.02 * span);
        assertEquals((0.3 - 0.05) * span, net.p95(), 0.02 * span);
        Share positive = found.chances().positive().orElseThrow().middle();
        assertEquals(0.3, positive.value(), 2 * positive.error());
        assertEquals(1, found.influences().get(0).indices().total(), 0.1);
        assertEquals(64, found.draws().size());
        assertEquals(32 * 3, found.runs());
        assertEquals(0, found.held(0));
        assertEquals(1, found.chances().neverShort().value());
    }

    /** What two consumers take adds up: their shares of the variance are those of their squared spans, and add up to one. */
    @Test
    void influencesOfAStraightLineAreTheSquaredSpans() throws Exception {
        UncertainTank tank =
                new UncertainTank(design, List.of(even("control.electronics_w", 0, 10), even("mixer.idle_w", 0, 20)));
        SpreadResult found = result(new SpreadStudy(tank, MILD, ENGINE, 128, 1), 2);
        assertEquals("mixer.idle_w", found.influences().get(0).key());
        assertEquals(0.8, found.influences().get(0).indices().total(), 0.05);
        assertEquals(0.2, found.influences().get(1).indices().total(), 0.05);
        double mean = IntStream.range(0, 128)
                .mapToDouble(i -> found.column("net_energy_kwh")[i])
                .average()
                .orElseThrow();
        double expected = netKWh - (5 - CONTROLS_W + 10 - 6) * 24 * DAYS / 1000;
        assertEquals(expected, mean, 0.01 * Math.abs(netKWh - expected) + 0.02);
    }

    /** A factor on rate and potential of all feed is what low, middle and high gas hold; the rest is drawn. */
    @Test
    void gasHeldLowMiddleAndHighIsThatOfTheDesign() throws Exception {
        UncertainTank tank = new UncertainTank(
                design,
                List.of(new Uncertain(
                        "feed.feedstocks[].methane_nm3_per_kg_vs", new Spread(0.5, 1.5, Spread.Shape.EVEN), true)));
        SpreadResult found = result(new SpreadStudy(tank, MILD, ENGINE, 8, 1), 1);
        Runner runner = new Runner(MILD.get(0).weather(), ENGINE);
        for (SpreadResult.Draw draw : found.draws()) {
            assertEquals(netKWh, draw.middleGas(), 0.01 * Math.abs(netKWh));
            assertEquals(net(runner, Estimate.LOW), draw.lowGas(), 0.01 * Math.abs(netKWh));
            assertEquals(net(runner, Estimate.HIGH), draw.highGas(), 0.01 * Math.abs(netKWh));
        }
        Quantiles net = found.figures().get("net_energy_kwh");
        assertTrue(net.p95() - net.p5() > 0.3 * Math.abs(netKWh), "the draws themselves differ: " + net);
    }

    private static double net(Runner runner, Estimate estimate) throws Exception {
        return BriefYear.run(design.at(estimate), runner).year().of(KeyFigures.NET);
    }

    @Test
    void anyRunAloneAndAnyNumberOfThreadsGiveTheSame() throws Exception {
        UncertainTank tank = new UncertainTank(
                design,
                List.of(
                        even("solar.area_m2", 1, 3),
                        even(Uncertain.AIR_OFFSET, -2, 2),
                        even(Uncertain.SUN_FACTOR, 0.8, 1.2)));
        List<WeatherYear> years = List.of(
                MILD.get(0),
                new WeatherYear("cold", StudyTank.from(LocalDateTime.of(2025, 4, 1, 0, 0), DAYS, -5, 200)));
        SpreadStudy study = new SpreadStudy(tank, years, ENGINE, 16, 3);
        List<Figures> whole = new ArrayList<>();
        try (Parallel parallel = new Parallel(3, Parallel.Progress.SILENT)) {
            parallel.each(study.runs(), study::run, whole::add);
        }
        SpreadStudy again = new SpreadStudy(tank, years, ENGINE, 16, 3);
        for (int run = study.runs() - 1; run >= 0; run--) {
            assertArrayEquals(whole.get(run).numbers(), again.run(run).numbers(), 0, "run " + run);
        }
        SpreadResult found = study.result(whole);
        assertEquals(8, found.draws().stream().filter(draw -> draw.year() == 0).count());
        assertTrue(found.influences().stream().anyMatch(one -> one.key().equals(SpreadResult.YEAR)));
        assertEquals(List.of("mild", "cold"), found.years());
        assertEquals(
                DAYS,
                found.daysC().stream().filter(day -> Double.isFinite(day.p50())).count());
    }

    @Test
    void aDrawThatIsNotAllowedIsNamed() throws Exception {
        UncertainTank tank = new UncertainTank(
                design, List.of(even("control.setpoint_c", 35, 45), even("solar.tank_high_limit_c", 36, 50)));
        SpreadStudy study = new SpreadStudy(tank, MILD, ENGINE, 32, 1);
        DrawRefused refused = assertThrows(DrawRefused.class, () -> result(study, 1));
        assertTrue(
                refused.getMessage().matches("run \\d+ draws a tank that is not allowed: solar\\..*"),
                refused.getMessage());
    }
}
