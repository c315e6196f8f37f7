package org.warmvat.engine;

import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** The starting state of a run: slurry and circuits as stated, the envelope steady against the first instant. */
public final class SteadyStart {

    private SteadyStart() {}

    /**
     * The network's state at the start of an hour (model.md section 10, starting state).
     *
     * @param network the network
     * @param hour index of the first weather hour of the run
     */
    public static State at(Network network, int hour) {
        State state = network.initialState();
        double timeS = hour * Hours.HOUR_S;
        network.enter(new Interval(timeS, Math.min(timeS + Hours.HOUR_S, network.nextJumpS(timeS)), hour));
        Equations equations = new Equations(network);
        equations.evaluate(timeS, state);
        equations.settleSteadyNodes(state);
        return state;
    }
}
