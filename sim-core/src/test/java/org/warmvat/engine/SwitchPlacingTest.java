package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.network.Circuit;
import org.warmvat.network.Gate;
import org.warmvat.network.Interval;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;

/**
 * Switches that are hard to place: those whose margin only grazes the threshold, and those that reach it steeply a hair after a step
 * began. The placing of the latter once went on for ever, since no trial was shorter than the one before. The work is counted,
 * not the time.
 */
class SwitchPlacingTest {

    private static final int HOURS = 48;
    private static final int MOST_EVALUATIONS = 200_000;
    private static final double THRESHOLD_C = 30;

    /** The body settles this much above the threshold, K: from hardly at all to clearly. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, 1e-10, 1e-9, 1e-8, 3e-8, 1e-7, 1e-6, 1e-5, 1e-3})
    void grazingTheThresholdIsBoundedWork(double aboveK) {
        Body body = new Body(1e6, 20).losing(200, timeS -> THRESHOLD_C + aboveK);
        int starts = starts(body, HOURS);
        assertTrue(starts <= 1, "starts: " + starts);
        assertTrue(aboveK < 1e-5 || starts == 1, "a clear crossing is not missed");
    }

    /** The body heats by 0.02 K/s, as a collector does in the sun, and begins this far below the threshold, K. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e-7, 1e-6, 5e-6, 1.4e-5, 3e-5, 6e-5, 9e-5, 2e-4, 1e-3})
    void reachingTheThresholdRightAwayIsBoundedWork(double belowK) {
        Body body = new Body(5e4, THRESHOLD_C - belowK).heated(1000, "heat");
        assertEquals(1, starts(body, 1));
    }

    /**
     * A circuit that follows within a minute is heated from an hour's beginning on while the air around it cools: it stands above the
     * threshold for some four minutes only, which ends well before the first instant of an hour's step.
     */
    @ParameterizedTest
    @EnumSource
    void aShortHumpAfterAJumpIsSeen(Engines engine) {
        Body body = new Body(4e6, 30);
        new Hump(body.assembly);
        int[] starts = new int[3];
        engine.run(body.build(), starts.length, hour -> {
            starts[hour.hour()] = hour.starts(1);
            return true;
        });
        assertArrayEquals(new int[] {0, 1, 0}, starts);
    }

    /**
     * A start that is barred until a store has cooled below 30 °C, after 1600 s, and from when its circuit is above 60 °C, ten minutes
     * later, while another switch is nearer to moving from then on.
     */
    @ParameterizedTest
    @EnumSource
    void aShortTimeBetweenTwoBarsIsSeen(Engines engine) {
        Body body = new Body(1e6, 30.8).losing(500.0 / 30.4, timeS -> 0);
        int off = body.assembly.switchOf("off").number();
        int node = body.assembly.body("circuit", 1e4, 38);
        body.assembly.circuit(
                node, new Circuit.Coil(off, Network.UNMETERED), Circuit.Quadratic.NONE, Circuit.Heater.NONE);
        body.assembly.source(node, Network.UNMETERED).set(100);
        body.assembly.switchOf("between").startsWhen(Gate.OPEN, Margin.below(0, 30), Margin.below(node, 60));
        body.assembly.switchOf("far").startsWhen(Gate.OPEN, Margin.above(0, 1000));
        int[] starts = new int[2];
        engine.run(body.build(), starts.length, hour -> {
            starts[hour.hour()] = hour.starts(1);
            return true;
        });
        assertArrayEquals(new int[] {1, 0}, starts);
    }

    /** A circuit heated by 500 W from the second hour on, with 100 W/K to air that falls by 20 K an hour from then on. */
    private static final class Hump implements Part {
        private final Source heat;

        Hump(Network.Assembly assembly) {
            int air = Body.known(assembly, "air", timeS -> THRESHOLD_C - 20 * Math.max(0, timeS / Body.HOUR_S - 1));
            int off = assembly.switchOf("off").number();
            int node = assembly.body("circuit", 6000, 30);
            assembly.circuit(
                    node, new Circuit.Coil(off, Network.UNMETERED), Circuit.Quadratic.NONE, Circuit.Heater.NONE);
            heat = assembly.source(node, Network.UNMETERED);
            assembly.exchange(node, air, 100, Network.UNMETERED);
            assembly.switchOf("hot")
                    .startsWhen(Gate.OPEN, Margin.above(node, THRESHOLD_C + 3.5))
                    .stopsWhen(Gate.OPEN, Margin.below(node, THRESHOLD_C + 3));
            assembly.part(this);
        }

        @Override
        public void enter(Interval interval) {
            heat.set(interval.hour() > 0 ? 500 : 0);
        }
    }

    private static int starts(Body body, int hours) {
        AtomicInteger evaluations = new AtomicInteger();
        body.assembly.source(Network.NOWHERE, Network.UNMETERED, state -> {
            if (evaluations.incrementAndGet() > MOST_EVALUATIONS) {
                throw new AssertionError("no end of segments");
            }
            return true;
        });
        body.assembly
                .switchOf("full")
                .startsWhen(Gate.OPEN, Margin.above(0, THRESHOLD_C))
                .stopsWhen(Gate.OPEN, Margin.below(0, THRESHOLD_C - 1));
        Network network = body.build();
        int[] starts = new int[1];
        new ExponentialEngine().run(network, network.initialState(), new Hours(0, hours), hour -> {
            starts[0] += hour.starts(0);
            return true;
        });
        return starts[0];
    }
}
