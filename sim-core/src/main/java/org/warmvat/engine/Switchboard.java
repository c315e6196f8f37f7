package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Switch;

/** Moves the switches of a network, in order, until none wants to move. */
final class Switchboard {

    /** More moves than this at one instant mean that two switches drive each other. */
    private static final int MOST_ROUNDS = 20;

    private final Network network;
    private final Switch[] controls;

    Switchboard(Network network) {
        this.network = network;
        controls = network.switches().stream().map(Network.NamedSwitch::control).toArray(Switch[]::new);
    }

    int size() {
        return controls.length;
    }

    boolean allOff(State state) {
        for (int i = 0; i < controls.length; i++) {
            if (state.isOn(i)) {
                return false;
            }
        }
        return true;
    }

    double margin(int index, double timeS, State state) {
        return controls[index].margin(timeS, state, state.isOn(index));
    }

    void move(int index, State state, HourRecord record) {
        boolean on = !state.isOn(index);
        state.setOn(index, on);
        if (on) {
            record.addStart(index);
        }
    }

    /** Lets every switch move that wants to at an instant. */
    void settle(double timeS, State state, HourRecord record) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean moved = false;
            for (int i = 0; i < controls.length; i++) {
                if (margin(i, timeS, state) >= 0) {
                    move(i, state, record);
                    moved = true;
                }
            }
            if (!moved) {
                return;
            }
        }
        throw new EngineFailure("switches chatter at hour " + (int) (timeS / Hours.HOUR_S) + ": "
                + network.switches().stream().map(Network.NamedSwitch::name).toList());
    }
}
