package org.warmvat.checks;

import org.warmvat.engine.Hours;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/** Cuts a run of the reference engine at a time within an hour and keeps the state there. */
final class Moment implements Part {

    private final double timeS;
    private State then;

    private Moment(double timeS) {
        this.timeS = timeS;
    }

    /** State of a network some seconds after its start. */
    static State of(double seconds, Network.Assembly assembly) {
        Moment moment = new Moment(seconds);
        assembly.part(moment);
        Network network = assembly.build();
        int hours = (int) Math.ceil(seconds / Hours.HOUR_S);
        new ReferenceEngine().run(network, network.initialState(), new Hours(0, hours), hour -> moment.then == null);
        return moment.then;
    }

    @Override
    public double nextJumpS(double now) {
        return now < timeS ? timeS : Double.POSITIVE_INFINITY;
    }

    @Override
    public void reached(double now, State state) {
        if (now >= timeS && then == null) {
            then = state.copy();
        }
    }
}
