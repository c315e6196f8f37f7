package org.warmvat.engine;

import org.warmvat.network.Chain;
import org.warmvat.network.Exchange;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;

/** The starting state of a run: slurry and circuits as stated, the envelope steady against the first instant. */
public final class SteadyStart {

    private final Network network;
    private final State state;

    private SteadyStart(Network network, State state) {
        this.network = network;
        this.state = state;
    }

    /**
     * Brings layers and rooms without mass into equilibrium with everything else at the start of an hour (model section 10, starting
     * state).
     *
     * @param network the network
     * @param state slurry, circuits, rooms with mass and stocks as they start
     * @param hour index of the first weather hour of the run
     */
    public static void settle(Network network, State state, int hour) {
        enter(network, state, hour);
        SteadyStart start = new SteadyStart(network, state);
        for (int room : network.nodes(Node.Kind.ROOM)) {
            if (network.nodes().get(room).isMassless()) {
                start.settleRoom(room);
            }
        }
        network.chains().forEach(start::settle);
    }

    /** Enters the first interval of an hour and looks at its first instant. */
    public static void enter(Network network, State state, int hour) {
        double timeS = hour * Hours.HOUR_S;
        network.enter(new Interval(timeS, Math.min(timeS + Hours.HOUR_S, network.nextJumpS(timeS)), hour));
        network.look(timeS, state);
    }

    /** Resistance of a chain from what is inside to what is outside, K/W. */
    private static double throughKPerW(Chain chain) {
        double sum = 1 / chain.outerWPerK();
        for (int i = 0; i < chain.size(); i++) {
            sum += 1 / chain.linkWPerK(i);
        }
        return sum;
    }

    private void settleRoom(int room) {
        double weight = 0;
        double sum = 0;
        for (Exchange exchange : network.exchanges()) {
            if (exchange.node() == room || exchange.other() == room) {
                int other = exchange.node() == room ? exchange.other() : exchange.node();
                weight += exchange.wPerK();
                sum += exchange.wPerK() * state.nodeC(other);
            }
        }
        for (Chain chain : network.chains()) {
            if (chain.inside() == room || chain.face().outside() == room) {
                int other = chain.inside() == room ? chain.face().outside() : chain.inside();
                double wPerK = 1 / throughKPerW(chain);
                weight += wPerK;
                sum += wPerK * state.nodeC(other);
            }
        }
        state.setNodeC(room, sum / weight);
    }

    private void settle(Chain chain) {
        double insideC = state.nodeC(chain.inside());
        double outwardsW = (insideC - state.nodeC(chain.face().outside())) / throughKPerW(chain);
        double celsius = insideC;
        for (int i = 0; i < chain.size(); i++) {
            celsius -= outwardsW / chain.linkWPerK(i);
            state.setNodeC(chain.first() + i, celsius);
        }
    }
}
