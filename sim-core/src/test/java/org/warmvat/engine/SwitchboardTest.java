package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Gate;
import org.warmvat.network.Interval;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;
import org.warmvat.network.Switch;

/** Switches that lean on each other, start in the wrong place or never come to rest. */
class SwitchboardTest {

    private static Margin reached() {
        return Margin.above(0, -1000);
    }

    /** The second follows the first at the same instant, whichever of the two was added first. */
    @Test
    void switchesSettleThatLeanOnEachOther() {
        for (boolean leaderFirst : new boolean[] {true, false}) {
            Body body = new Body(1e6, 30);
            int leader = leaderFirst ? 0 : 1;
            int follower = 1 - leader;
            Switch[] both = {body.assembly.switchOf("one"), body.assembly.switchOf("other")};
            both[leader].startsWhen(Gate.OPEN, Margin.below(0, 36));
            both[follower].startsWhen(state -> state.isOn(leader)).stopsWhen(state -> !state.isOn(leader), reached());
            Network network = body.build();
            State state = network.initialState();
            HourRecord record = new HourRecord(network, state);
            record.begin(0);
            new Switchboard(network).settle(0, state, record, 0);
            assertTrue(state.isOn(leader) && state.isOn(follower));
            assertEquals(1, record.starts(leader));
            assertEquals(1, record.starts(follower));
        }
    }

    @ParameterizedTest
    @EnumSource
    void chatteringIsAFailureThatNamesTheSwitches(Engines engine) {
        Body body = new Body(1e6, 30).losing(10, timeS -> 0);
        boolean[] late = new boolean[1];
        body.assembly
                .switchOf("restless")
                .startsWhen(state -> late[0], reached())
                .stopsWhen(state -> late[0], reached());
        body.assembly.switchOf("calm");
        body.assembly.part(new Part() {
            @Override
            public void enter(Interval interval) {
                late[0] = interval.hour() >= 2;
            }
        });
        Network network = body.build();
        EngineFailure failure = assertThrows(EngineFailure.class, () -> engine.run(network, 5));
        assertEquals("switches chatter at hour 2: [restless, calm]", failure.getMessage());
    }

    /** A margin of exactly 0 moves the switch: the thresholds are "at or below", "at or above". */
    @ParameterizedTest
    @EnumSource
    void aThresholdReachedExactlyCounts(Engines engine) {
        Body body = new Body(1e6, 36);
        body.assembly.switchOf("at").startsWhen(Gate.OPEN, Margin.above(0, 36));
        body.assembly.switchOf("above").startsWhen(Gate.OPEN, Margin.above(0, 36.0001));
        State end = engine.run(body.build(), 1);
        assertTrue(end.isOn(0));
        assertFalse(end.isOn(1));
    }

    /** Two bodies, two thermostats: of two switchings within one step the earlier comes first and changes what follows. */
    @ParameterizedTest
    @EnumSource
    void theEarlierOfTwoSwitchingsComesFirst(Engines engine) {
        Body body = new Body(1e6, 30).heated(1e6 / 3600, "heater");
        int early = body.assembly
                .switchOf("early")
                .startsWhen(Gate.OPEN, Margin.above(0, 30.5))
                .number();
        // would come at 30.6 °C without the first
        int late = body.assembly
                .switchOf("late")
                .startsWhen(state -> !state.isOn(early), Margin.above(0, 30.6))
                .number();
        int last = body.assembly
                .switchOf("last")
                .startsWhen(state -> state.isOn(early), Margin.above(0, 30.8))
                .number();
        Body.Moves first = new Body.Moves(early, body.assembly);
        Body.Moves never = new Body.Moves(late, body.assembly);
        Body.Moves second = new Body.Moves(last, body.assembly);
        engine.run(body.build(), 1);
        // a rise of 1 K/h; a threshold is placed within 1e-5 K, 0.036 s
        assertEquals(1800, first.timesS.get(0), 0.05);
        assertEquals(List.of(), never.timesS);
        assertEquals(2880, second.timesS.get(0), 0.05);
    }
}
