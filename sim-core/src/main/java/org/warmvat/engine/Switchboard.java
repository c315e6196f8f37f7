package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Switch;

/** Moves the switches of a network, in order, until none wants to move. */
public final class Switchboard {

    /** More moves than this at one instant mean that two switches drive each other. */
    private static final int MOST_ROUNDS = 20;

    private final Switch[] switches;

    /** The switches of a network. */
    public Switchboard(Network network) {
        switches = network.switches().toArray(Switch[]::new);
    }

    /** Moves a switch and counts its start. */
    public void move(int index, State state, HourRecord record) {
        boolean on = !state.isOn(index);
        state.setOn(index, on);
        if (on) {
            record.addStart(index);
        }
    }

    /**
     * Lets every switch move that wants to at an instant.
     *
     * @param hairK margins so little below 0 count as reached
     */
    public void settle(double timeS, State state, HourRecord record, double hairK) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean moved = false;
            for (int i = 0; i < switches.length; i++) {
                if (switches[i].margin(state) >= -hairK) {
                    move(i, state, record);
                    moved = true;
                }
            }
            if (!moved) {
                return;
            }
        }
        throw new EngineFailure("switches chatter at hour " + (int) (timeS / Hours.HOUR_S) + ": "
                + Arrays.stream(switches).map(Switch::name).toList());
    }
}
