package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** An instant of a step: what the parts were asked at, what they answered, and what was found. */
final class Moment {

    /** Where the live parts were asked. */
    final State asked;

    /** What is truly there: live nodes, stocks, switches. */
    final State state;

    /** What heats are taken at, of all fed nodes; within a step the parabolas fitted to the temperatures. */
    final State fitted;

    final Flows live;
    final Flows slow;

    /** Per mode: content, push by the heats, and the push's change in a correction. */
    final double[] content;

    final double[] push;
    final double[] change;

    /** Per fed node: heat beyond what the modes hold, the temperature that it is taken at, and the law between them. */
    final double[] heatW;

    final double[] celsius;
    final double[] excessWPerK;
    final double[] sourceW;

    private final Network network;
    private final int liveNodes;
    private final int[] fed;
    private Modes modes;

    Moment(Network network, State like, int[] fed) {
        this.network = network;
        this.fed = fed;
        liveNodes = network.liveNodes();
        asked = like.copy();
        state = like.copy();
        fitted = like.copy();
        live = network.newLiveFlows();
        slow = network.newSlowFlows();
        int modeCount = 0;
        for (double capacity : network.capacitiesJPerK()) {
            modeCount += capacity > 0 ? 1 : 0;
        }
        content = new double[modeCount];
        push = new double[modeCount];
        change = new double[modeCount];
        heatW = new double[fed.length];
        celsius = new double[fed.length];
        excessWPerK = new double[fed.length];
        sourceW = new double[fed.length];
    }

    /** Turns to other modes. */
    void turnTo(Modes with) {
        modes = with;
    }

    /** Asks the parts that depend on time alone. */
    void look(double timeS) {
        network.surround(timeS, slow);
    }

    /** Asks the live parts. */
    void ask(double timeS) {
        network.contribute(timeS, asked, live);
    }

    /** Notes how heats of layers beyond the modes depend on their temperatures; after {@link #look}. */
    void noteLayers() {
        for (int i = liveNodes; i < fed.length; i++) {
            noteLaw(i);
        }
    }

    /** Notes the same of the live nodes; after {@link #look} and {@link #ask}. */
    void noteLive() {
        for (int i = 0; i < liveNodes; i++) {
            noteLaw(i);
        }
    }

    private void noteLaw(int i) {
        int node = fed[i];
        sourceW[i] = slow.sourceW(node) + (node < liveNodes ? live.sourceW(node) : 0);
        excessWPerK[i] = nodeWPerK(node) - modes.heldWPerK(node);
    }

    /** Conductance of a node to known temperatures as asked, W/K. */
    double nodeWPerK(int node) {
        return slow.conductanceWPerK(node) + (node < liveNodes ? live.conductanceWPerK(node) : 0);
    }

    /** Heat into a fed node beyond what the modes hold, at the temperature found. */
    double owedW(int i) {
        return sourceW[i] - excessWPerK[i] * celsius[i];
    }

    /** Finds heats, push and temperatures of a beginning; what has mass is as warm as it was when asked. */
    void settle() {
        Arrays.fill(push, 0);
        for (int i = 0; i < fed.length; i++) {
            boolean massless = modes.masslessKPerW(fed[i]) > 0;
            celsius[i] = massless ? truthC(i, content) : state.nodeC(fed[i]);
            heatW[i] = owedW(i);
            state.setNodeC(fed[i], celsius[i]);
            Sums.add(heatW[i], modes.shape(fed[i]), push);
        }
    }

    /** True temperature of a fed node at contents; a junction without mass also feels its heat at once. */
    double truthC(int i, double[] contents) {
        double free = Sums.product(modes.shape(fed[i]), contents);
        double atOnce = modes.masslessKPerW(fed[i]);
        return atOnce == 0 ? free : (free + atOnce * sourceW[i]) / (1 + atOnce * excessWPerK[i]);
    }

    /** Goes on from the end of a step as it truly is; heats and push stay the parabolas', since all that they still do is foresee. */
    void goOn(double[] contents, double[] endC) {
        System.arraycopy(contents, 0, content, 0, content.length);
        System.arraycopy(endC, 0, celsius, 0, celsius.length);
    }

    /** Takes over heats and push of a beginning as a first guess. */
    void follow(Moment beginning) {
        System.arraycopy(beginning.push, 0, push, 0, push.length);
        System.arraycopy(beginning.heatW, 0, heatW, 0, heatW.length);
    }

    /** The next question is at what was found. */
    void aim() {
        for (int i = 0; i < liveNodes; i++) {
            asked.setNodeC(i, celsius[i]);
        }
        for (int stock = 0; stock < network.stocks().size(); stock++) {
            asked.setStock(stock, state.stock(stock));
        }
    }

    /** Writes the temperatures found into the state that flows are taken at. */
    void publish() {
        for (int i = 0; i < fed.length; i++) {
            fitted.setNodeC(fed[i], celsius[i]);
        }
    }

    /**
     * Flows are now taken at the mean of two true temperatures of each fed node, but as far as they are beyond the modes still at the
     * fitted one. (Of live nodes little is beyond the modes.)
     */
    void turnToTruth(double[] fromC, double[] toC) {
        for (int i = 0; i < fed.length; i++) {
            double truthC = 0.5 * (fromC[i] + toC[i]);
            boolean bound = i < liveNodes || excessWPerK[i] == 0;
            double beyond = bound ? 0 : excessWPerK[i] / nodeWPerK(fed[i]);
            fitted.setNodeC(fed[i], truthC + beyond * (celsius[i] - truthC));
        }
    }

    /** Positions of the switches as in another state. */
    void takeSwitches(State from) {
        for (int i = 0; i < network.switches().size(); i++) {
            asked.setOn(i, from.isOn(i));
            state.setOn(i, from.isOn(i));
        }
    }

    /** Rate of a stock at a content, per second. */
    double stockRate(int stock, double stockContent) {
        return live.gainPerS(stock) - live.lossPerS(stock) * stockContent;
    }

    void addMeters(double weightS, double[] totals) {
        live.addMeters(fitted, asked, network.parents(), weightS, totals);
        slow.addMeters(fitted, asked, network.parents(), weightS, totals);
    }
}
