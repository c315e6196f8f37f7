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
    private int foremost;

    Switchboard(Network network) {
        this.network = network;
        controls = network.switches().stream().map(Network.NamedSwitch::control).toArray(Switch[]::new);
    }

    int size() {
        return controls.length;
    }

    double margin(int index, double timeS, State state) {
        return controls[index].margin(timeS, state, state.isOn(index));
    }

    /** Largest margin of any switch at a state, negative while none wants to move; notes whose it is. */
    double furthest(double timeS, State state) {
        double furthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < controls.length; i++) {
            double margin = margin(i, timeS, state);
            if (margin > furthest) {
                furthest = margin;
                foremost = i;
            }
        }
        return furthest;
    }

    /** The switch whose margin {@link #furthest} found last. */
    int foremost() {
        return foremost;
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
