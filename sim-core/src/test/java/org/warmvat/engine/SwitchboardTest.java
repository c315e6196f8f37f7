package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Switches that lean on each other, start in the wrong place or never come to rest. */
class SwitchboardTest {

    /** The second follows the first at the same instant, whichever of the two was added first. */
    @Test
    void switchesSettleThatLeanOnEachOther() {
        for (boolean leaderFirst : new boolean[] {true, false}) {
            Body body = new Body(1e6, 30);
            int leader = leaderFirst ? 0 : 1;
            int follower = 1 - leader;
            for (int i = 0; i < 2; i++) {
                int own = i;
                body.assembly.switchOf(
                        own == leader ? "leader" : "follower",
                        (timeS, state, on) ->
                                own == leader ? (on ? -1 : 36 - state.nodeC(0)) : (state.isOn(leader) == on ? -1 : 1));
            }
            Network network = body.build();
            State state = network.initialState();
            HourRecord record = new HourRecord(network, state);
            record.begin(0);
            new Switchboard(network).settle(0, state, record);
            assertTrue(state.isOn(leader) && state.isOn(follower));
            assertEquals(1, record.starts(leader));
            assertEquals(1, record.starts(follower));
        }
    }

    @ParameterizedTest
    @EnumSource
    void chatteringIsAFailureThatNamesTheSwitches(Engines engine) {
        Body body = new Body(1e6, 30).losing(10, timeS -> 0);
        body.assembly.switchOf("restless", (timeS, state, on) -> timeS >= 7200 ? 1 : -1);
        body.assembly.switchOf("calm", (timeS, state, on) -> -1);
        Network network = body.build();
        EngineFailure failure = assertThrows(EngineFailure.class, () -> engine.run(network, 5));
        assertEquals("switches chatter at hour 2: [restless, calm]", failure.getMessage());
    }

    /** A margin of exactly 0 moves the switch: the thresholds are "at or below", "at or above". */
    @ParameterizedTest
    @EnumSource
    void aThresholdReachedExactlyCounts(Engines engine) {
        Body body = new Body(1e6, 36);
        body.assembly.switchOf("at", (timeS, state, on) -> on ? -1 : state.nodeC(0) - 36);
        body.assembly.switchOf("above", (timeS, state, on) -> on ? -1 : state.nodeC(0) - 36.0001);
        State end = engine.run(body.build(), 1);
        assertTrue(end.isOn(0));
        assertFalse(end.isOn(1));
    }

    /** Two bodies, two thermostats: of two switchings within one step the earlier comes first and changes what follows. */
    @ParameterizedTest
    @EnumSource
    void theEarlierOfTwoSwitchingsComesFirst(Engines engine) {
        Body body = new Body(1e6, 30).heated(1e6 / 3600, "heater");
        int early = body.assembly.switchOf("early", (timeS, state, on) -> on ? -1 : state.nodeC(0) - 30.5);
        // would come at 30.6 °C had the first not moved its mark to 30.8
        int late = body.assembly.switchOf(
                "late", (timeS, state, on) -> on ? -1 : state.nodeC(0) - (state.isOn(early) ? 30.8 : 30.6));
        Body.Moves first = new Body.Moves(early);
        Body.Moves second = new Body.Moves(late);
        body.assembly.part(first);
        body.assembly.part(second);
        engine.run(body.build(), 1);
        // a rise of 1 K/h; a threshold is placed within 1e-5 K, 0.036 s
        assertEquals(1800, first.timesS.get(0), 0.05);
        assertEquals(2880, second.timesS.get(0), 0.05);
    }
}
