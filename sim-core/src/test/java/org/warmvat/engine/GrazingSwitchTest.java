package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.network.State;

/**
 * A switch whose margin only grazes its threshold: the placing of such a switching once went on for ever, each trial shortening the
 * step by next to nothing. The work is counted, not the time.
 */
class GrazingSwitchTest {

    private static final int HOURS = 48;
    private static final int MOST_EVALUATIONS = 200_000;
    private static final double THRESHOLD_C = 30;

    /** The body settles this much above the threshold, K: from hardly at all to clearly. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, 1e-10, 1e-9, 1e-8, 3e-8, 1e-7, 1e-6, 1e-5, 1e-3})
    void isPassedWithBoundedWork(double aboveK) {
        Body body = new Body(1e6, 20).losing(200, timeS -> THRESHOLD_C + aboveK);
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
        var network = body.build();
        State state = network.initialState();
        int[] starts = new int[1];
        new FastEngine().run(network, state, new Hours(0, HOURS), hour -> {
            starts[0] += hour.starts(0);
            return true;
        });
        assertEquals(THRESHOLD_C + aboveK, state.nodeC(body.slurry), 1e-6);
        assertTrue(starts[0] <= 1, "starts: " + starts[0]);
        assertTrue(aboveK < 1e-5 || starts[0] == 1, "a clear crossing is not missed");
    }
}
