package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Jumps, early ends, interruption, names. */
class RunTest {

    /** Bursts of one second and of a third of a second inside long quiet hours: none is stepped over, none counted twice. */
    @ParameterizedTest
    @EnumSource
    void shortBurstsAreCountedExactly(Engines engine) {
        Body body = new Body(1e6, 20);
        double third = 10_000 + 1.0 / 3;
        new Steps(new double[] {5000, 5001, 10_000, third}, new double[] {7e3, 0, 9e3}, "heat", body.assembly);
        int heat = body.assembly.meter("heat");
        double[] total = new double[3];
        State end = engine.run(body.build(), 3, hour -> {
            total[hour.hour()] = hour.meter(heat);
            return true;
        });
        assertEquals(0, total[0]);
        assertEquals(7e3, total[1], 1e-6);
        assertEquals(3e3, total[2], 1e-6);
        assertEquals(20.01, end.nodeC(0), 1e-10);
    }

    @ParameterizedTest
    @EnumSource
    void theSinkSeesEveryHourOnceAndMayEndTheRun(Engines engine) {
        Network body = new Body(1e6, 20).losing(10, timeS -> 0).build();
        State state = body.initialState();
        List<Integer> seen = new ArrayList<>();
        engine.engine().run(body, state, new Hours(3, 9), hour -> {
            seen.add(hour.hour());
            return hour.hour() < 6;
        });
        assertEquals(List.of(3, 4, 5, 6), seen);
        assertEquals(20 * Math.exp(-10 * 4 * 3600 / 1e6), state.nodeC(0), engine.withinK());
    }

    @ParameterizedTest
    @EnumSource
    void anInterruptedThreadStopsBetweenHours(Engines engine) {
        Network body = new Body(1e6, 20).build();
        CancellationException stopped = assertThrows(
                CancellationException.class,
                () -> engine.run(body, 9, hour -> {
                    Thread.currentThread().interrupt();
                    return true;
                }));
        assertEquals("stopped at hour 1", stopped.getMessage());
        // clears the mark for the tests that follow
        assertTrue(Thread.interrupted());
    }

    @ParameterizedTest
    @EnumSource
    void anHourOfNothingLeavesEverythingAsItIs(Engines engine) {
        State end = engine.run(new Body(1e6, 17.25).build(), 1);
        assertEquals(17.25, end.nodeC(0), 1e-13);
    }

    /** What the slurry's least and most saw lies between its ends where it only cools. */
    @ParameterizedTest
    @EnumSource
    void extremesOfTheHourAreItsEndsWhenItOnlyCools(Engines engine) {
        Network body = new Body(1e6, 20).losing(10, timeS -> 0).build();
        double[] before = {20};
        engine.run(body, 5, hour -> {
            assertEquals(before[0], hour.slurryMostC());
            before[0] = hour.state().nodeC(0);
            assertEquals(before[0], hour.slurryLeastC());
            return true;
        });
    }

    @Test
    void enginesSayWhichTheyAre() {
        assertEquals("reference", new ReferenceEngine().name());
        assertEquals("fast", new ExponentialEngine().name());
    }

    @Test
    void hoursRunForward() {
        assertEquals(
                "hours 5 to 4, expected 0 <= first <= end",
                assertThrows(IllegalArgumentException.class, () -> new Hours(5, 4))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> new Hours(-1, 4));
        assertEquals(0, new Hours(4, 4).end() - new Hours(4, 4).first());
    }

    /** Equations that blow up are a failure with hour and reason, not a number. */
    @Test
    void theReferenceEngineTellsWhereItFailed() {
        Body body = new Body(1e6, 20);
        // dT/dt = T^2/100000: from 20 °C it leaves every bound after 5000 s
        body.receiving(celsius -> 10 * celsius * celsius);
        EngineFailure failure = assertThrows(EngineFailure.class, () -> Engines.REFERENCE.run(body.build(), 3));
        assertTrue(
                failure.getMessage().startsWith("the reference engine could not go on at hour 1: "),
                failure.getMessage());
    }
}
