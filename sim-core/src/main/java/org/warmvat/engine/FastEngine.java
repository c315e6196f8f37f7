package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The everyday engine: the network's modes, exact in steps of any length, with heats beyond them along parabolas and switches
 * located inside the step. It reads the same contributions as the reference engine.
 */
public final class FastEngine implements Engine {

    /** Runs of one tank one after the other need the same modes; finding them takes longer than a short run. */
    private static final ThreadLocal<ModeShelf> SHELF = new ThreadLocal<>();

    @Override
    public String name() {
        return "fast";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        HourRecord record = new HourRecord(network, state);
        FastIntegration integration = new FastIntegration(network, state, record, shelfFor(network));
        HourLoop.run(network, record, hours, integration::over, sink);
    }

    private ModeShelf shelfFor(Network network) {
        ModeShelf shelf = SHELF.get();
        if (shelf == null || !shelf.serves(network)) {
            shelf = new ModeShelf(network);
            SHELF.set(shelf);
        }
        return shelf;
    }
}
