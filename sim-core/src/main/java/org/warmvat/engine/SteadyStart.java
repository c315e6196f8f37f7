package org.warmvat.engine;

import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** The starting state of a run: slurry and circuits as stated, the envelope steady against the first instant. */
public final class SteadyStart {

    private SteadyStart() {}

    /**
     * Brings the nodes marked to start steady into equilibrium at the start of an hour (model section 10, starting state).
     *
     * @param network the network
     * @param state slurry, circuits and stocks as they start
     * @param hour index of the first weather hour of the run
     */
    public static void settle(Network network, State state, int hour) {
        double timeS = hour * Hours.HOUR_S;
        network.enter(new Interval(timeS, Math.min(timeS + Hours.HOUR_S, network.nextJumpS(timeS)), hour));
        Equations equations = new Equations(network);
        equations.evaluate(timeS, state);
        equations.settleSteadyNodes(state);
    }
}
