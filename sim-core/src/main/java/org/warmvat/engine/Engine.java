package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Integrates a network over weather hours. */
public interface Engine {

    /** Name printed with the results. */
    String name();

    /**
     * Runs a network over some hours.
     *
     * @param network the network; its parts belong to this run
     * @param state state at the start, moved to the end of the last hour run
     * @param hours the weather hours
     * @param sink receives each hour and may end the run early
     * @throws EngineFailure when the equations cannot be integrated
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    void run(Network network, State state, Hours hours, HourSink sink);
}
