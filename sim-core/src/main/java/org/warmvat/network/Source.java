package org.warmvat.network;

/**
 * A rate that its part states: heat into a node, W, or what only a meter counts, such as electricity, W, or methane, Nm3/s. Over an
 * interval it is a value and a slope by the slurry's temperature; the part renews both whenever it is asked.
 */
public final class Source {

    private final int node;
    private final int meter;
    private final Gate gate;
    private final boolean always;
    private double rate;
    private double slopePerK;

    Source(int node, int meter, Gate gate) {
        this.node = node;
        this.meter = meter;
        this.gate = gate;
        always = gate.equals(Gate.OPEN);
    }

    /** States a rate that does not depend on the slurry. */
    public void set(double perS) {
        rate = perS;
        slopePerK = 0;
    }

    /**
     * States a rate at the state asked about.
     *
     * @param perS rate, W or Nm3/s
     * @param perSPerK its derivative by the slurry's temperature
     */
    public void set(double perS, double perSPerK) {
        rate = perS;
        slopePerK = perSPerK;
    }

    /** Node that it heats, or {@link Network#NOWHERE}. */
    public int node() {
        return node;
    }

    /** Meter, or {@link Network#UNMETERED}. */
    public int meter() {
        return meter;
    }

    /** Whether it is on. */
    public boolean isOn(State state) {
        return always || gate.isOpen(state);
    }

    /** Rate last stated. */
    public double rate() {
        return rate;
    }

    /** Its derivative by the slurry's temperature. */
    public double slopePerK() {
        return slopePerK;
    }
}
