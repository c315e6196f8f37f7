package org.warmvat.engine;

import java.util.ArrayList;
import java.util.List;
import org.warmvat.network.Network;

/** The modes that a run has needed so far, one set for each way in which circuits are linked and conductances stand. */
final class ModeShelf {

    /** Live nodes may be held at a conductance this far off, relative: what is left over is stepped. */
    private static final double LIVE_WITHIN = 0.3;

    /** Layers next to the weather may be held at a conductance this far off, relative. */
    private static final double LAYER_WITHIN = 0.15;

    /** More sets than this are not kept: a run that needs more begins to collect anew. */
    private static final int MOST_KEPT = 256;

    private final Network network;
    private final List<Modes> kept = new ArrayList<>();
    private Modes last;

    ModeShelf(Network network) {
        this.network = network;
    }

    /** Modes that suit the conductances just asked, those used last if they do. */
    Modes suiting(Moment asked) {
        if (last == null || !suits(last, asked)) {
            last = find(asked);
        }
        return last;
    }

    private Modes find(Moment asked) {
        for (Modes modes : kept) {
            if (suits(modes, asked)) {
                return modes;
            }
        }
        if (kept.size() == MOST_KEPT) {
            kept.clear();
        }
        int nodes = network.parents().length;
        double[] linkWPerK = new double[nodes];
        double[] heldWPerK = new double[nodes];
        for (int node = 0; node < nodes; node++) {
            linkWPerK[node] = asked.linkWPerK(node);
            heldWPerK[node] = asked.nodeWPerK(node);
        }
        Modes made = new Modes(network, linkWPerK, heldWPerK);
        kept.add(made);
        return made;
    }

    private boolean suits(Modes modes, Moment asked) {
        for (int node = 0; node < network.parents().length; node++) {
            double within = node < network.liveNodes() ? LIVE_WITHIN : LAYER_WITHIN;
            double heldWPerK = modes.heldWPerK(node);
            if (asked.linkWPerK(node) != modes.linkWPerK(node)
                    || Math.abs(asked.nodeWPerK(node) - heldWPerK) > within * heldWPerK) {
                return false;
            }
        }
        return true;
    }
}
