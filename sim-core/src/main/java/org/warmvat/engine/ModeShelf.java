package org.warmvat.engine;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.warmvat.network.Network;

/**
 * The modes that a tank has needed so far, one set for each way in which circuits are linked and conductances stand.
 *
 * <p>Conductances are held at the nearest value of a grid and what is left over is stepped, so that a few dozen sets serve a year
 * of wind. The grid is fixed: which set is taken depends on the conductances alone and not on what was needed before, and runs
 * of one tank may share a shelf without telling on each other. For one thread.
 */
final class ModeShelf {

    /** From one held conductance of a circuit to the next, where the sun or the flow limit's band makes it change. */
    private static final double LIVE_RATIO = 1.15;

    /** From one held conductance of a layer next to the weather to the next. */
    private static final double LAYER_RATIO = 4;

    private static final double LIVE_RATIO_LOG = Math.log(LIVE_RATIO);
    private static final double LAYER_RATIO_LOG = Math.log(LAYER_RATIO);

    /** More sets than this are not kept: a tank that needs more begins to collect anew. */
    private static final int MOST_KEPT = 256;

    private final Network network;
    private final Map<Integer, Modes> kept = new HashMap<>();
    private final double[] power;
    private final double[] askedWPerK;
    private final double[] heldWPerK;
    private final double[] linkWPerK;
    private Modes last;

    ModeShelf(Network network) {
        this.network = network;
        int nodes = network.parents().length;
        power = new double[nodes];
        Arrays.fill(power, Double.NaN);
        askedWPerK = new double[nodes];
        heldWPerK = new double[nodes];
        linkWPerK = network.linksWPerK().clone();
    }

    /** Whether another network has the same nodes, so that the same modes serve it. */
    boolean serves(Network other) {
        return Arrays.equals(network.parents(), other.parents())
                && Arrays.equals(network.linksWPerK(), other.linksWPerK())
                && Arrays.equals(network.capacitiesJPerK(), other.capacitiesJPerK())
                && network.liveNodes() == other.liveNodes();
    }

    /** Modes that suit the conductances just asked. */
    Modes suiting(Moment asked) {
        for (int node = 0; node < heldWPerK.length; node++) {
            if (node < network.liveNodes()) {
                linkWPerK[node] = asked.live.linkWPerK(node);
            }
            double nodeWPerK = asked.nodeWPerK(node);
            if (nodeWPerK != askedWPerK[node]) {
                askedWPerK[node] = nodeWPerK;
                hold(node, nodeWPerK);
            }
        }
        if (last == null || !last.hold(linkWPerK, heldWPerK)) {
            last = find();
        }
        return last;
    }

    /** Holds a node at the nearest power of the grid's ratio; nothing at all, or less, is held at nothing. */
    private void hold(int node, double nodeWPerK) {
        if (nodeWPerK <= 0) {
            power[node] = Double.NaN;
            heldWPerK[node] = 0;
            return;
        }
        double ratioLog = node < network.liveNodes() ? LIVE_RATIO_LOG : LAYER_RATIO_LOG;
        double nearest = Math.rint(Math.log(nodeWPerK) / ratioLog);
        if (nearest != power[node]) {
            power[node] = nearest;
            heldWPerK[node] = Math.exp(nearest * ratioLog);
        }
    }

    private Modes find() {
        int hash = 31 * Arrays.hashCode(linkWPerK) + Arrays.hashCode(heldWPerK);
        Modes known = kept.get(hash);
        if (known != null && known.hold(linkWPerK, heldWPerK)) {
            return known;
        }
        if (kept.size() == MOST_KEPT) {
            kept.clear();
        }
        Modes made = new Modes(network, linkWPerK, heldWPerK);
        kept.put(hash, made);
        return made;
    }
}
