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
    private final double[] bendWPerK2;
    private final double[] cornerWPerK2;
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
    private int[] heatMeter = new int[16];
    private State at;
    private int rates;
    private int[] rateMeter = new int[8];
    private double[] ratePerS = new double[8];

    Flows(int nodes, int links, int stocks) {
        conductanceWPerK = new double[nodes];
        sourceW = new double[nodes];
        linkWPerK = new double[links];
        linkMeter = new int[links];
        bendWPerK2 = new double[links];
        cornerWPerK2 = new double[links];
        gainPerS = new double[stocks];
        lossPerS = new double[stocks];
    }

    /** Empties everything before the parts contribute at a state. */
    void clear(State state) {
        clear();
        at = state;
        Arrays.fill(linkWPerK, 0);
        Arrays.fill(linkMeter, UNMETERED);
        Arrays.fill(bendWPerK2, 0);
        Arrays.fill(cornerWPerK2, 0);
        Arrays.fill(gainPerS, 0);
        Arrays.fill(lossPerS, 0);
    }

    /** Empties all that does not depend on a state. */
    void clear() {
        Arrays.fill(conductanceWPerK, 0);
        Arrays.fill(sourceW, 0);
        exchanges = 0;
        heats = 0;
        rates = 0;
    }

    /**
     * A conductance between a live node and its parent; the meter counts the heat that the parent receives.
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
        sourceW[node] += watts;
        note(node, watts, 0, meter);
    }

    /**
     * Heat into a node that depends on its temperature in some other way than by a conductance.
     *
     * @param node the node
     * @param watts heat at the present state, W
     * @param slopeWPerK its derivative by the node's temperature, W/K
     * @param bendWPerK2 how fast that derivative changes with the temperature, W/K2
     * @param meter meter or {@link #UNMETERED}
     */
    public void heat(int node, double watts, double slopeWPerK, double bendWPerK2, int meter) {
        conductanceWPerK[node] -= slopeWPerK;
        sourceW[node] += watts - slopeWPerK * at.nodeC(node);
        this.bendWPerK2[node] += bendWPerK2;
        note(node, watts, slopeWPerK, meter);
    }

    /**
     * Warns that a heat's slope jumps near the present temperature: away by some kelvin it may be wrong by half of this times
     * their square.
     *
     * @param node the node
     * @param cornerWPerK2 W/K2, 0 or more
     */
    public void corner(int node, double cornerWPerK2) {
        this.cornerWPerK2[node] = Math.max(this.cornerWPerK2[node], cornerWPerK2);
    }

    private void note(int node, double watts, double slopeWPerK, int meter) {
        if (heats == heatNode.length) {
            growHeats();
        }
        heatNode[heats] = node;
        heatW[heats] = watts;
        heatSlopeWPerK[heats] = slopeWPerK;
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
     * What following the slopes from the contributed state to another gets wrong: the largest error of any live node, W, from bends
     * and corners.
     */
    public double slopeErrorW(State contributed, State now) {
        double worst = 0;
        for (int node = 0; node < bendWPerK2.length; node++) {
            double movedK = now.nodeC(node) - contributed.nodeC(node);
            double bend = Math.max(Math.abs(bendWPerK2[node]), cornerWPerK2[node]);
            worst = Math.max(worst, 0.5 * bend * movedK * movedK);
        }
        return worst;
    }

    /** How fast the slopes of a live node's heats change with its temperature, W/K2. */
    public double bendWPerK2(int node) {
        return bendWPerK2[node];
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
