package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

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
        int circuit = body.assembly.node(new Network.Node("circuit", 6000, body.slurry, 30, false));
        body.assembly.part(new Hump(circuit));
        body.assembly.switchOf(
                "hot",
                (timeS, state, on) ->
                        on ? THRESHOLD_C + 3 - state.nodeC(circuit) : state.nodeC(circuit) - (THRESHOLD_C + 3.5));
        int[] starts = new int[3];
        engine.run(body.build(), starts.length, hour -> {
            starts[hour.hour()] = hour.starts(0);
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
        int circuit = body.assembly.node(new Network.Node("circuit", 1e4, body.slurry, 38, false));
        body.assembly.part((timeS, state, flows) -> flows.heat(circuit, 100, Flows.UNMETERED));
        body.assembly.switchOf(
                "between",
                (timeS, state, on) -> on ? -1 : Math.min(30 - state.nodeC(body.slurry), 60 - state.nodeC(circuit)));
        body.assembly.switchOf("far", (timeS, state, on) -> -3);
        int[] starts = new int[2];
        engine.run(body.build(), starts.length, hour -> {
            starts[hour.hour()] = hour.starts(0);
            return true;
        });
        assertArrayEquals(new int[] {1, 0}, starts);
    }

    /**
     * From the end of a step to a switching a hair beside it the margin's slope shows the way; from further off it would be a leap in the
     * dark, over switchings that may lie between: a step that ends too early is left as it is, one too late is searched afresh.
     */
    @ParameterizedTest
    @CsvSource({"999, 1000", "1001, 1000", "996, 1000", "900, Infinity", "1100, 1000", "3000, 1000"})
    void aSlopeIsFollowedToWhatIsNear(double stepS, double foundS) {
        Body body = new Body(1e6, 20);
        body.assembly.switchOf("by the clock", (timeS, state, on) -> 1e-3 * (timeS - 1000));
        Network network = body.build();
        State state = network.initialState();
        Switchboard switchboard = new Switchboard(network);
        ModalStep step = new ModalStep(network, switchboard, state, new int[] {0});
        step.begin(new ModeShelf(network).suiting(step.ask(0, state)));
        step.attempt(0, stepS);
        assertEquals(foundS, new SwitchSearch(switchboard, step).nearbyS(0), 0.02);
    }

    /** Heat of 500 W from the second hour on, a loss of 100 W/K to air that falls by 20 K an hour from then on. */
    private static final class Hump implements Part {
        private final int circuit;
        private int hour;

        Hump(int circuit) {
            this.circuit = circuit;
        }

        @Override
        public void enter(Interval interval) {
            hour = interval.hour();
        }

        @Override
        public void contribute(double timeS, State state, Flows flows) {
            double airC = THRESHOLD_C - 20 * Math.max(0, timeS / Body.HOUR_S - 1);
            flows.exchange(circuit, 100, airC, Flows.UNMETERED);
            flows.heat(circuit, hour > 0 ? 500 : 0, Flows.UNMETERED);
        }
    }

    private static int starts(Body body, int hours) {
        AtomicInteger evaluations = new AtomicInteger();
        body.assembly.part((timeS, state, flows) -> {
            if (evaluations.incrementAndGet() > MOST_EVALUATIONS) {
                throw new AssertionError("no end of trials at " + timeS + " s");
            }
        });
        body.assembly.switchOf(
                "full",
                (timeS, state, on) ->
                        on ? THRESHOLD_C - 1 - state.nodeC(body.slurry) : state.nodeC(body.slurry) - THRESHOLD_C);
        Network network = body.build();
        int[] starts = new int[1];
        new FastEngine().run(network, network.initialState(), new Hours(0, hours), hour -> {
            starts[0] += hour.starts(0);
            return true;
        });
        return starts[0];
    }
}
