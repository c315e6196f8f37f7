package org.warmvat.network;

import java.util.Arrays;

/**
 * What flows at an instant, gathered from the parts. Temperatures in °C, heat in W, conductances in W/K.
 *
 * <p>One concrete class, reused at every evaluation, because the engines read it millions of times a run. A meter is the
 * index of a named flow that is integrated over time; {@link #UNMETERED} marks a flow that nobody asks about.
 */
public final class Flows {

    /** Meter of a flow that is not counted. */
    public static final int UNMETERED = -1;

    private final double[] conductanceWPerK;
    private final double[] sourceW;
    private final double[] linkWPerK;
    private final int[] linkMeter;
    private final double[] gainPerS;
    private final double[] lossPerS;
    private int exchanges;
    private int[] exchangeNode = new int[16];
    private double[] exchangeWPerK = new double[16];
    private double[] exchangeC = new double[16];
    private int[] exchangeMeter = new int[16];
    private int heats;
    private int[] heatNode = new int[16];
    private double[] heatW = new double[16];
    private double[] heatSlopeWPerK = new double[16];
    private double[] heatBendWPerK2 = new double[16];
    private int[] heatMeter = new int[16];
    private State at;
    private int rates;
    private int[] rateMeter = new int[8];
    private double[] ratePerS = new double[8];

    Flows(int nodes, int stocks) {
        conductanceWPerK = new double[nodes];
        sourceW = new double[nodes];
        linkWPerK = new double[nodes];
        linkMeter = new int[nodes];
        gainPerS = new double[stocks];
        lossPerS = new double[stocks];
    }

    /** Empties everything before the parts contribute at a state. */
    void clear(State state) {
        at = state;
        for (int i = 0; i < linkWPerK.length; i++) {
            conductanceWPerK[i] = 0;
            sourceW[i] = 0;
            linkWPerK[i] = 0;
            linkMeter[i] = UNMETERED;
        }
        Arrays.fill(gainPerS, 0);
        Arrays.fill(lossPerS, 0);
        exchanges = 0;
        heats = 0;
        rates = 0;
    }

    /**
     * A conductance between a node and its parent; the meter counts the heat that the parent receives.
     *
     * @param child the node
     * @param conductanceWPerK W/K
     * @param meter meter or {@link #UNMETERED}
     */
    public void link(int child, double conductanceWPerK, int meter) {
        linkWPerK[child] = conductanceWPerK;
        linkMeter[child] = meter;
    }

    /**
     * A conductance between a node and a known temperature; the meter counts the heat that the node receives.
     *
     * @param node the node
     * @param conductanceWPerK W/K
     * @param otherC the known temperature, °C
     * @param meter meter or {@link #UNMETERED}
     */
    public void exchange(int node, double conductanceWPerK, double otherC, int meter) {
        if (exchanges == exchangeNode.length) {
            growExchanges();
        }
        this.conductanceWPerK[node] += conductanceWPerK;
        sourceW[node] += conductanceWPerK * otherC;
        exchangeNode[exchanges] = node;
        exchangeWPerK[exchanges] = conductanceWPerK;
        exchangeC[exchanges] = otherC;
        exchangeMeter[exchanges++] = meter;
    }

    /** Heat into a node that does not depend on its temperature, W. */
    public void heat(int node, double watts, int meter) {
        heat(node, watts, 0, 0, meter);
    }

    /**
     * Heat into a node that depends on its temperature in some other way than by a conductance.
     *
     * @param node the node
     * @param watts heat at the present state, W
     * @param slopeWPerK its derivative by the node's temperature, W/K
     * @param bendWPerK2 about how fast that derivative changes with the temperature, W/K2, 0 or more
     * @param meter meter or {@link #UNMETERED}
     */
    public void heat(int node, double watts, double slopeWPerK, double bendWPerK2, int meter) {
        if (heats == heatNode.length) {
            growHeats();
        }
        conductanceWPerK[node] -= slopeWPerK;
        sourceW[node] += watts - slopeWPerK * at.nodeC(node);
        heatNode[heats] = node;
        heatW[heats] = watts;
        heatSlopeWPerK[heats] = slopeWPerK;
        heatBendWPerK2[heats] = bendWPerK2;
        heatMeter[heats++] = meter;
    }

    /**
     * Gain and loss of a stock: {@code d stock/dt = gain - loss x stock}.
     *
     * @param stock the stock
     * @param gain in the stock's unit per second
     * @param loss 1/s
     */
    public void stock(int stock, double gain, double loss) {
        gainPerS[stock] += gain;
        lossPerS[stock] += loss;
    }

    /** Adds to the rate of a meter that counts no heat of a node: electricity in W, methane in Nm3/s. */
    public void meter(int meter, double rate) {
        if (rates == rateMeter.length) {
            rateMeter = Arrays.copyOf(rateMeter, 2 * rates);
            ratePerS = Arrays.copyOf(ratePerS, 2 * rates);
        }
        rateMeter[rates] = meter;
        ratePerS[rates++] = rate;
    }

    private void growExchanges() {
        int size = 2 * exchanges;
        exchangeNode = Arrays.copyOf(exchangeNode, size);
        exchangeWPerK = Arrays.copyOf(exchangeWPerK, size);
        exchangeC = Arrays.copyOf(exchangeC, size);
        exchangeMeter = Arrays.copyOf(exchangeMeter, size);
    }

    private void growHeats() {
        int size = 2 * heats;
        heatNode = Arrays.copyOf(heatNode, size);
        heatW = Arrays.copyOf(heatW, size);
        heatSlopeWPerK = Arrays.copyOf(heatSlopeWPerK, size);
        heatBendWPerK2 = Arrays.copyOf(heatBendWPerK2, size);
        heatMeter = Arrays.copyOf(heatMeter, size);
    }

    /** Conductance between a node and its parent, W/K. */
    public double linkWPerK(int child) {
        return linkWPerK[child];
    }

    /**
     * Sum of a node's conductances to known temperatures, less slopes of heats, W/K: the node receives {@code source -
     * conductance x T} besides its links.
     */
    public double conductanceWPerK(int node) {
        return conductanceWPerK[node];
    }

    /** Whether anything but its links flows into a node. */
    public boolean feeds(int node) {
        return conductanceWPerK[node] != 0 || sourceW[node] != 0;
    }

    /** What a node receives at 0 °C besides its links, heats linearised about the contributed state, W. */
    public double sourceW(int node) {
        return sourceW[node];
    }

    /**
     * Adds the flows of every meter, times a weight, at a state that may differ from the contributed one by a step's
     * correction (heats follow their slopes).
     *
     * @param state state at which conductances are read
     * @param contributed slurry and circuit temperatures at which the heats were contributed
     * @param parent parent of each node
     * @param weightS weight, usually seconds
     * @param totals per meter; added to
     */
    public void addMeters(State state, State contributed, int[] parent, double weightS, double[] totals) {
        for (int child = 1; child < linkWPerK.length; child++) {
            if (linkMeter[child] >= 0) {
                totals[linkMeter[child]] +=
                        weightS * linkWPerK[child] * (state.nodeC(child) - state.nodeC(parent[child]));
            }
        }
        for (int i = 0; i < exchanges; i++) {
            if (exchangeMeter[i] >= 0) {
                totals[exchangeMeter[i]] += weightS * exchangeWPerK[i] * (exchangeC[i] - state.nodeC(exchangeNode[i]));
            }
        }
        for (int i = 0; i < heats; i++) {
            if (heatMeter[i] >= 0) {
                int node = heatNode[i];
                totals[heatMeter[i]] +=
                        weightS * (heatW[i] + heatSlopeWPerK[i] * (state.nodeC(node) - contributed.nodeC(node)));
            }
        }
        for (int i = 0; i < rates; i++) {
            totals[rateMeter[i]] += weightS * ratePerS[i];
        }
    }

    /**
     * Corrects meters where a solver knows the integrals of temperatures better than from the instants at which it added
     * meters: links, and as much of each node's conductances as it held constant.
     *
     * @param heldShare share of each node's conductances that was held
     * @param defectKs true integral of each node's temperature less the one already counted, K s
     * @param parent parent of each node
     * @param totals per meter; added to
     */
    public void addDefects(double[] heldShare, double[] defectKs, int[] parent, double[] totals) {
        for (int child = 1; child < linkWPerK.length; child++) {
            if (linkMeter[child] >= 0) {
                totals[linkMeter[child]] += linkWPerK[child] * (defectKs[child] - defectKs[parent[child]]);
            }
        }
        for (int i = 0; i < exchanges; i++) {
            if (exchangeMeter[i] >= 0) {
                int node = exchangeNode[i];
                totals[exchangeMeter[i]] -= heldShare[node] * exchangeWPerK[i] * defectKs[node];
            }
        }
        for (int i = 0; i < heats; i++) {
            if (heatMeter[i] >= 0) {
                int node = heatNode[i];
                totals[heatMeter[i]] += heldShare[node] * heatSlopeWPerK[i] * defectKs[node];
            }
        }
    }

    /**
     * What following the slopes from the contributed state to another gets wrong: the largest error of any heat, W, from its
     * bend.
     */
    public double slopeErrorW(State contributed, State now) {
        double worst = 0;
        for (int i = 0; i < heats; i++) {
            if (heatBendWPerK2[i] != 0) {
                double movedK = now.nodeC(heatNode[i]) - contributed.nodeC(heatNode[i]);
                worst = Math.max(worst, 0.5 * heatBendWPerK2[i] * movedK * movedK);
            }
        }
        return worst;
    }

    /** Gain of a stock, per second. */
    public double gainPerS(int stock) {
        return gainPerS[stock];
    }

    /** Loss rate of a stock, 1/s. */
    public double lossPerS(int stock) {
        return lossPerS[stock];
    }
}
