package org.warmvat.engine.exponential;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.network.Gate;
import org.warmvat.network.State;

/** The gates of a network, each asked once an interval and once after each move of a switch, however many pieces share it. */
final class OpenGates {

    private final List<Gate> found = new ArrayList<>(List.of(Gate.OPEN));
    private Gate[] gates = {};
    private boolean[] open = {true};

    /** Number of a gate. */
    int number(Gate gate) {
        if (!found.contains(gate)) {
            found.add(gate);
        }
        return found.indexOf(gate);
    }

    /** Asks all as the switches stand. */
    void ask(State state) {
        if (gates.length < found.size()) {
            gates = found.toArray(Gate[]::new);
            open = new boolean[gates.length];
            open[0] = true;
        }
        for (int i = 1; i < gates.length; i++) {
            open[i] = gates[i].isOpen(state);
        }
    }

    /** Whether a gate was open when last asked. */
    boolean isOpen(int number) {
        return open[number];
    }
}
