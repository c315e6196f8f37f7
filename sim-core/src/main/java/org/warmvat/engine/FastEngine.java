package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The everyday engine: an implicit L-stable method whose stages are solved by eliminating the tree of nodes from its leaves,
 * with adaptive steps and switches located inside the step. It reads the same contributions as the reference engine.
 */
public final class FastEngine implements Engine {

    @Override
    public String name() {
        return "fast";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        HourRecord record = new HourRecord(network, state);
        HourLoop.run(network, record, hours, new FastIntegration(network, state, record)::over, sink);
    }
}
