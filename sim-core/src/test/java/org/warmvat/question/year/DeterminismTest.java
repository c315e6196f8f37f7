package org.warmvat.question.year;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.sample.InventedWeather;
import org.warmvat.sample.TankPlan;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** The same input gives the same output, to the last bit, however often and on however many threads. */
class DeterminismTest {

    private static YearResult run(Weather weather, Engine engine) throws StudyRefused {
        Design design = new TankPlan().build();
        return YearStudy.run(design, new Runner(weather, engine), HourSink.IGNORE);
    }

    private static void same(YearResult one, YearResult other) {
        // arrays of bits, since records compare arrays by identity
        assertArrayEquals(one.hourly().orZero("slurry_c"), other.hourly().orZero("slurry_c"));
        assertArrayEquals(
                one.hourly().column("collector_c").orElseThrow(),
                other.hourly().column("collector_c").orElseThrow());
        assertArrayEquals(
                one.hourly().column("solar_heat_w").orElseThrow(),
                other.hourly().column("solar_heat_w").orElseThrow());
        assertEquals(one.whole().figures(), other.whole().figures());
        assertEquals(
                one.days().stream().map(Period::figures).toList(),
                other.days().stream().map(Period::figures).toList());
        assertEquals(one.warnings(), other.warnings());
    }

    @Test
    void twoRunsAreEqualBitForBit() throws StudyRefused {
        for (Engine engine : new Engine[] {new ExponentialEngine(), new ReferenceEngine()}) {
            same(run(InventedWeather.days(95, 12), engine), run(InventedWeather.days(95, 12), engine));
        }
    }

    /** Four runs on two threads that share weather and design, against one alone. */
    @Test
    void threadsDoNotMeet() throws Exception {
        Weather shared = InventedWeather.days(95, 12);
        YearResult alone = run(InventedWeather.days(95, 12), new ExponentialEngine());
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            Callable<YearResult> task = () -> run(shared, new ExponentialEngine());
            for (Future<YearResult> future : threads.invokeAll(List.of(task, task, task, task))) {
                same(alone, future.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** One engine object may serve many runs: it keeps nothing. */
    @Test
    void anEngineRemembersNothing() throws StudyRefused {
        Engine engine = new ExponentialEngine();
        run(InventedWeather.days(10, 12), engine);
        same(run(InventedWeather.days(95, 12), new ExponentialEngine()), run(InventedWeather.days(95, 12), engine));
    }
}
