package org.warmvat.network;

/** Temperatures of the nodes, contents of the stocks and positions of the switches at an instant. Mutable, for one thread. */
public final class State {

    private final double[] nodeC;
    private final double[] stock;
    private final boolean[] on;

    State(double[] nodeC, double[] stock, boolean[] on) {
        this.nodeC = nodeC;
        this.stock = stock;
        this.on = on;
    }

    /** An independent copy. */
    public State copy() {
        return new State(nodeC.clone(), stock.clone(), on.clone());
    }

    /** Takes over everything from another state of the same network. */
    public void set(State other) {
        System.arraycopy(other.nodeC, 0, nodeC, 0, nodeC.length);
        System.arraycopy(other.stock, 0, stock, 0, stock.length);
        System.arraycopy(other.on, 0, on, 0, on.length);
    }

    /** Takes over the positions of the switches alone. */
    public void setSwitches(State other) {
        System.arraycopy(other.on, 0, on, 0, on.length);
    }

    /** Temperature of a node, °C. */
    public double nodeC(int node) {
        return nodeC[node];
    }

    /** Sets the temperature of a node, °C. */
    public void setNodeC(int node, double celsius) {
        nodeC[node] = celsius;
    }

    /** Content of a stock, in its own unit. */
    public double stock(int index) {
        return stock[index];
    }

    /** Sets the content of a stock. */
    public void setStock(int index, double content) {
        stock[index] = content;
    }

    /** Position of a switch. */
    public boolean isOn(int index) {
        return on[index];
    }

    /** Moves a switch. */
    public void setOn(int index, boolean position) {
        on[index] = position;
    }
}
