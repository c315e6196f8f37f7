package org.warmvat.engine;

import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Junctions without mass, such as a headspace: what flows into them leaves them at once. */
final class Junctions {

    private Junctions() {}

    /** Sets the temperature of every junction so that the heat entering it leaves it. */
    static void settle(Network network, Flows slow, State state) {
        int[] parent = network.parents();
        double[] capacity = network.capacitiesJPerK();
        for (int i = network.liveNodes(); i < parent.length; i++) {
            if (capacity[i] == 0) {
                double weight = slow.linkWPerK(i) + slow.conductanceWPerK(i);
                double sum = slow.linkWPerK(i) * state.nodeC(parent[i]) + slow.sourceW(i);
                for (int child = i + 1; child < parent.length; child++) {
                    if (parent[child] == i) {
                        weight += slow.linkWPerK(child);
                        sum += slow.linkWPerK(child) * state.nodeC(child);
                    }
                }
                state.setNodeC(i, sum / weight);
            }
        }
    }
}
