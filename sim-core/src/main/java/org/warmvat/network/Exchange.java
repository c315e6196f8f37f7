package org.warmvat.network;

/**
 * A conductance between two nodes, such as a fitting, an edge or the air that a shelter changes. The meter counts the heat that
 * the first receives from the second, J.
 */
public final class Exchange {

    private final int node;
    private final int other;
    private final int meter;
    private final Opening opening;
    private double wPerK;

    /**
     * A conductance that grows as the first node gets warmer, and only where it is the warmer of the two.
     *
     * @param fromC temperature of the first node from which it grows, °C
     * @param overK kelvin over which it grows
     * @param mostWPerK what it grows to, W/K; no less than what it is
     */
    public record Opening(double fromC, double overK, double mostWPerK) {

        /** An exchange that does not open. */
        public static final Opening NEVER = new Opening(Double.POSITIVE_INFINITY, 1, 0);
    }

    Exchange(int node, int other, double wPerK, int meter, Opening opening) {
        this.node = node;
        this.other = other;
        this.meter = meter;
        this.opening = opening;
        this.wPerK = wPerK;
    }

    /** The node whose heat is metered. */
    public int node() {
        return node;
    }

    /** The other node. */
    public int other() {
        return other;
    }

    /** Meter, or {@link Network#UNMETERED}. */
    public int meter() {
        return meter;
    }

    /** How it opens. */
    public Opening opening() {
        return opening;
    }

    /** Conductance while it is not opened, W/K. */
    public double wPerK() {
        return wPerK;
    }

    /** Changes the conductance, W/K. */
    public void set(double conductanceWPerK) {
        wPerK = conductanceWPerK;
    }

    /** Conductance at the temperatures of its two ends, W/K. */
    public double wPerK(double nodeC, double otherC) {
        if (nodeC <= opening.fromC || nodeC <= otherC) {
            return wPerK;
        }
        double share = Math.min(1, (nodeC - opening.fromC) / opening.overK);
        return wPerK + share * Math.max(0, opening.mostWPerK - wPerK);
    }
}
