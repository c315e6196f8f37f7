package org.warmvat.engine.reference;

import java.util.Arrays;
import java.util.List;
import org.warmvat.network.Chain;
import org.warmvat.network.Circuit;
import org.warmvat.network.Exchange;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Stock;

/** The network's equations at an instant: heat into every node, rates of the stocks and of the meters. */
final class Equations {

    private final Network network;
    private final List<Node> nodes;
    private final double[] heatW;
    private final double[] stockPerS;
    private final double[] meterPerS;

    Equations(Network network) {
        this.network = network;
        nodes = network.nodes();
        heatW = new double[nodes.size()];
        stockPerS = new double[network.stocks().size()];
        meterPerS = new double[network.meters().size()];
    }

    /** Works everything out at a state, in which known nodes and rooms without mass are settled on the way. */
    void evaluate(double timeS, State state) {
        network.look(timeS, state);
        settleRooms(state);
        network.decay(state);
        network.ask(timeS, state);
        Arrays.fill(heatW, 0);
        Arrays.fill(meterPerS, 0);
        exchange(state);
        for (Chain chain : network.chains()) {
            conduct(chain, state);
        }
        for (Circuit circuit : network.circuits()) {
            circulate(circuit, state);
        }
        for (Source source : network.sources()) {
            if (source.isOn(state)) {
                give(source.node(), source.rate());
                count(source.meter(), source.rate());
            }
        }
        for (int i = 0; i < network.watches().size(); i++) {
            if (network.depthMeter(i) >= 0) {
                count(
                        network.depthMeter(i),
                        Math.max(0, network.watches().get(i).at(state)));
            }
        }
        fill(state);
    }

    /** Heat into a node at the instant last evaluated, W. */
    double heatW(int node) {
        return heatW[node];
    }

    /** How fast a stock changes, per second. */
    double stockPerS(int stock) {
        return stockPerS[stock];
    }

    /** Rates of the meters. Shared: read only. */
    double[] meterPerS() {
        return meterPerS;
    }

    private void give(int node, double watts) {
        if (node >= 0) {
            heatW[node] += watts;
        }
    }

    private void count(int meter, double rate) {
        if (meter >= 0) {
            meterPerS[meter] += rate;
        }
    }

    private void exchange(State state) {
        for (Exchange exchange : network.exchanges()) {
            double nodeC = state.nodeC(exchange.node());
            double otherC = state.nodeC(exchange.other());
            double watts = exchange.wPerK(nodeC, otherC) * (otherC - nodeC);
            heatW[exchange.node()] += watts;
            heatW[exchange.other()] -= watts;
            count(exchange.meter(), watts);
        }
    }

    private void conduct(Chain chain, State state) {
        int before = chain.inside();
        for (int i = 0; i < chain.size(); i++) {
            int node = chain.first() + i;
            double inwards = chain.linkWPerK(i) * (state.nodeC(node) - state.nodeC(before));
            heatW[before] += inwards;
            heatW[node] -= inwards;
            before = node;
        }
        int outside = chain.face().outside();
        double watts = chain.outerWPerK() * (state.nodeC(outside) - state.nodeC(before));
        heatW[before] += watts;
        heatW[outside] -= watts;
        count(chain.face().meter(), watts);
    }

    private void circulate(Circuit circuit, State state) {
        double celsius = state.nodeC(circuit.node());
        if (state.isOn(circuit.coil().pump())) {
            double watts = circuit.coilWPerK() * (celsius - state.nodeC(Network.SLURRY));
            heatW[Network.SLURRY] += watts;
            heatW[circuit.node()] -= watts;
            count(circuit.coil().meter(), watts);
        }
        Circuit.Quadratic quadratic = circuit.quadratic();
        if (quadratic.wPerK2() > 0) {
            double differenceK = celsius - state.nodeC(quadratic.around());
            double watts = -quadratic.wPerK2() * differenceK * Math.abs(differenceK);
            heatW[circuit.node()] += watts;
            count(quadratic.meter(), watts);
        }
        if (circuit.heater().gate().isOpen(state)) {
            double watts = circuit.heater().powerW(celsius);
            heatW[circuit.node()] += watts;
            count(circuit.heater().meter(), watts);
        }
    }

    private void fill(State state) {
        for (Stock stock : network.stocks()) {
            int number = stock.number();
            double rate = stock.gainPerS() - stock.lossPerS() * state.stock(number);
            for (Stock.Inflow inflow : stock.inflows()) {
                rate += inflow.factor() * meterPerS[inflow.meter()];
            }
            boolean full = stock.bound().full() >= 0 && state.isOn(stock.bound().full());
            stockPerS[number] = full ? Math.min(0, rate) : rate;
            count(stock.bound().surplus(), rate - stockPerS[number]);
        }
    }

    /** Sets the temperature of every room without mass so that the heat entering it leaves it. */
    void settleRooms(State state) {
        for (int room = 0; room < nodes.size(); room++) {
            if (nodes.get(room).isMassless()) {
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
                    if (chain.inside() == room) {
                        weight += chain.linkWPerK(0);
                        sum += chain.linkWPerK(0) * state.nodeC(chain.first());
                    }
                    if (chain.face().outside() == room) {
                        weight += chain.outerWPerK();
                        sum += chain.outerWPerK() * state.nodeC(chain.first() + chain.size() - 1);
                    }
                }
                state.setNodeC(room, sum / weight);
            }
        }
    }
}
