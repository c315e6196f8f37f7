package org.warmvat.engine;

import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * Both engines with what each promises on a single body over a few days: the reference engine its integrator's tolerances, the
 * everyday engine steps that are put right by 5e-4 K at most.
 */
enum Engines {
    REFERENCE(1e-6, 1e-6),
    FAST(1e-3, 1e-5);

    private final double withinK;
    private final double withinShareOfTime;

    Engines(double withinK, double withinShareOfTime) {
        this.withinK = withinK;
        this.withinShareOfTime = withinShareOfTime;
    }

    Engine engine() {
        return this == REFERENCE ? new ReferenceEngine() : new ExponentialEngine();
    }

    /** How near a temperature comes to its closed form, K. */
    double withinK() {
        return withinK;
    }

    /** How near a time between switchings comes to its closed form, relative. */
    double withinShareOfTime() {
        return withinShareOfTime;
    }

    /** Runs a network from its initial state for some hours; returns the state at the end. */
    State run(Network network, int hours) {
        return run(network, hours, HourSink.IGNORE);
    }

    /** The same, with every hour seen. */
    State run(Network network, int hours, HourSink sink) {
        State state = network.initialState();
        engine().run(network, state, new Hours(0, hours), sink);
        return state;
    }
}
