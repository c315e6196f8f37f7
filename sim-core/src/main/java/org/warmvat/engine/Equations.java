package org.warmvat.engine;

import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** The network's equations at an instant: rates of the nodes, found from the gathered flows. */
final class Equations {

    private final Network network;
    private final Flows live;
    private final Flows slow;
    private final int[] parent;
    private final double[] capacity;
    private final double[] conductance;
    private final double[] source;
    private final double[] link;
    private final double[] lasting;
    private final double[] heatW;

    Equations(Network network) {
        this.network = network;
        live = network.newLiveFlows();
        slow = network.newSlowFlows();
        parent = network.parents();
        capacity = network.capacitiesJPerK();
        conductance = new double[parent.length];
        source = new double[parent.length];
        link = new double[parent.length];
        lasting = network.linksWPerK();
        heatW = new double[parent.length];
    }

    /** Gathers the flows at a state and sums them up. */
    void evaluate(double timeS, State state) {
        network.contribute(timeS, state, live);
        network.surround(timeS, slow);
        for (int i = 0; i < link.length; i++) {
            boolean isLive = i < network.liveNodes();
            conductance[i] = slow.conductanceWPerK(i) + (isLive ? live.conductanceWPerK(i) : 0);
            source[i] = slow.sourceW(i) + (isLive ? live.sourceW(i) : 0);
            link[i] = isLive ? live.linkWPerK(i) : lasting[i];
        }
    }

    /**
     * Rates of everything that an explicit method integrates, at a state whose junctions are settled on the way.
     *
     * @param timeS the instant
     * @param state the state
     * @param massive nodes with mass, in order
     * @param rates K/s of these nodes, then per second of the stocks; overwritten as far as these go
     */
    void rates(double timeS, State state, int[] massive, double[] rates) {
        evaluate(timeS, state);
        settleJunctions(state);
        heat(state);
        for (int i = 0; i < massive.length; i++) {
            rates[i] = heatW[massive[i]] / capacity[massive[i]];
        }
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            rates[massive.length + stock] = live.gainPerS(stock) - live.lossPerS(stock) * state.stock(stock);
        }
    }

    /** Adds the present flow of every meter. */
    void addMeters(State state, double[] rates) {
        live.addMeters(state, state, parent, 1, rates);
        slow.addMeters(state, state, parent, 1, rates);
    }

    /** Sets the temperature of every junction without mass so that the heat entering it leaves it. */
    void settleJunctions(State state) {
        for (int i = network.liveNodes(); i < parent.length; i++) {
            if (capacity[i] == 0) {
                double weight = lasting[i] + slow.conductanceWPerK(i);
                double sum = lasting[i] * state.nodeC(parent[i]) + slow.sourceW(i);
                for (int child = i + 1; child < parent.length; child++) {
                    if (parent[child] == i) {
                        weight += lasting[child];
                        sum += lasting[child] * state.nodeC(child);
                    }
                }
                state.setNodeC(i, sum / weight);
            }
        }
    }

    /** Heat into each node at the state, W. */
    private void heat(State state) {
        for (int i = 0; i < parent.length; i++) {
            heatW[i] = source[i] - conductance[i] * state.nodeC(i);
        }
        for (int i = 1; i < parent.length; i++) {
            double intoParent = link[i] * (state.nodeC(i) - state.nodeC(parent[i]));
            heatW[i] -= intoParent;
            heatW[parent[i]] += intoParent;
        }
    }

    /**
     * Brings the nodes marked to start steady into equilibrium with the others and the surroundings, by eliminating the tree
     * from its leaves.
     */
    void settleSteadyNodes(State state) {
        int count = parent.length;
        double[] diagonal = conductance.clone();
        double[] right = source.clone();
        boolean[] free = new boolean[count];
        for (int i = count - 1; i >= 1; i--) {
            free[i] = network.nodes().get(i).startsSteady() || capacity[i] == 0;
            double own = diagonal[i] + link[i];
            if (free[i] && own > 0) {
                diagonal[parent[i]] += link[i] - link[i] * link[i] / own;
                right[parent[i]] += link[i] * right[i] / own;
                diagonal[i] = own;
            } else {
                free[i] = false;
                diagonal[parent[i]] += link[i];
                right[parent[i]] += link[i] * state.nodeC(i);
            }
        }
        for (int i = 1; i < count; i++) {
            if (free[i]) {
                state.setNodeC(i, (right[i] + link[i] * state.nodeC(parent[i])) / diagonal[i]);
            }
        }
    }
}
