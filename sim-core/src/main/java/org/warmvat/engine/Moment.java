package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** An instant of a step: what the parts were asked at, what they answered, and what was found. */
final class Moment {

    final State asked;
    final State state;
    final Flows live;
    final Flows slow;

    /** Per mode: content, push by the heats, and the push's change in a correction. */
    final double[] content;

    final double[] push;
    final double[] change;

    /** Per fed node: heat beyond what the modes hold, and the temperature found. */
    final double[] heatW;

    final double[] celsius;
    final double[] excessWPerK;
    private final Network network;
    private final int liveNodes;
    private final int[] fed;
    private final double[] sourceW;
    private final double[] heldShare;
    private final double[] pushSlope;
    private final double[] heatSlope;
    private Modes modes;

    Moment(Network network, State like, int[] fed) {
        this.network = network;
        this.fed = fed;
        liveNodes = network.liveNodes();
        asked = like.copy();
        state = like.copy();
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
        heldShare = new double[network.parents().length];
        pushSlope = new double[modeCount];
        heatSlope = new double[fed.length];
    }

    /** Asks the parts. */
    void ask(double timeS) {
        network.contribute(timeS, asked, live);
        network.surround(timeS, asked, slow);
        for (int i = 0; i < fed.length; i++) {
            int node = fed[i];
            sourceW[i] = slow.sourceW(node) + (node < liveNodes ? live.sourceW(node) : 0);
            excessWPerK[i] = nodeWPerK(node) - (modes == null ? 0 : modes.heldWPerK(node));
        }
    }

    /** Conductance of a node to known temperatures as asked, W/K. */
    double nodeWPerK(int node) {
        return slow.conductanceWPerK(node) + (node < liveNodes ? live.conductanceWPerK(node) : 0);
    }

    /** Conductance of a node to its parent as asked, W/K. */
    double linkWPerK(int node) {
        return node < liveNodes ? live.linkWPerK(node) : slow.linkWPerK(node);
    }

    /** Heat into a fed node beyond what the modes hold, at the temperature found. */
    double owedW(int i) {
        return sourceW[i] - excessWPerK[i] * celsius[i];
    }

    /** Turns to other modes. */
    void turnTo(Modes with) {
        modes = with;
    }

    /** Finds heats and push of a beginning from its state, and the temperatures of junctions without mass from its contents. */
    void feed() {
        Arrays.fill(push, 0);
        for (int i = 0; i < fed.length; i++) {
            double atOnce = modes.masslessKPerW(fed[i]);
            excessWPerK[i] = nodeWPerK(fed[i]) - modes.heldWPerK(fed[i]);
            celsius[i] = atOnce == 0 ? state.nodeC(fed[i]) : Sums.product(modes.shape(fed[i]), content);
            heatW[i] = owedW(i) / (1 + excessWPerK[i] * atOnce);
            celsius[i] += atOnce * heatW[i];
            Sums.add(heatW[i], modes.shape(fed[i]), push);
        }
        publish();
    }

    /** Notes how heats and push changed over a step that ends here. */
    void slopeFrom(Moment beginning, double stepS) {
        for (int k = 0; k < push.length; k++) {
            pushSlope[k] = (push[k] - beginning.push[k]) / stepS;
        }
        for (int i = 0; i < fed.length; i++) {
            heatSlope[i] = (heatW[i] - beginning.heatW[i]) / stepS;
        }
    }

    /** Takes over heats and push of a beginning, moved on by their slopes, as a first guess. */
    void follow(Moment beginning, double aheadS) {
        for (int k = 0; k < push.length; k++) {
            push[k] = beginning.push[k] + aheadS * beginning.pushSlope[k];
        }
        for (int i = 0; i < fed.length; i++) {
            heatW[i] = beginning.heatW[i] + aheadS * beginning.heatSlope[i];
        }
    }

    /** Temperatures of the fed nodes from the contents. */
    void read() {
        for (int i = 0; i < fed.length; i++) {
            celsius[i] = Sums.product(modes.shape(fed[i]), content) + modes.masslessKPerW(fed[i]) * heatW[i];
        }
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

    /** Writes the temperatures found into the state. */
    void publish() {
        for (int i = 0; i < fed.length; i++) {
            state.setNodeC(fed[i], celsius[i]);
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
        return slow.gainPerS(stock) - slow.lossPerS(stock) * stockContent;
    }

    void addMeters(double weightS, double[] totals) {
        live.addMeters(state, asked, network.parents(), weightS, totals);
        slow.addMeters(state, asked, network.parents(), weightS, totals);
    }

    /** Corrects meters by what the temperatures' integrals differ from those of parabolas, as far as the modes hold flows. */
    void addDefects(double[] defectKs, double[] totals) {
        for (int node : fed) {
            double nodeWPerK = nodeWPerK(node);
            heldShare[node] = nodeWPerK == 0 ? 0 : modes.heldWPerK(node) / nodeWPerK;
        }
        live.addDefects(heldShare, defectKs, network.parents(), totals);
        slow.addDefects(heldShare, defectKs, network.parents(), totals);
    }
}
