package org.warmvat.network;

/**
 * How far a state is beyond a threshold: a constant and weights of one or two temperatures or of a stock. Zero or more means reached.
 */
public final class Margin {

    private double constant;
    // a node of no weight is read all the same, which is cheaper than to ask
    private int node;
    private double weight;
    private int other;
    private double otherWeight;
    private int stock = Network.NOWHERE;
    private double stockWeight;

    private Margin(double constant) {
        this.constant = constant;
    }

    /** How far a node stands above a temperature, K. */
    public static Margin above(int node, double celsius) {
        return new Margin(-celsius).plus(1, node);
    }

    /** How far a node stands below a temperature, K. */
    public static Margin below(int node, double celsius) {
        return new Margin(celsius).plus(-1, node);
    }

    /** How far a stock is above a content, times a scale that makes of its unit something like a kelvin. */
    public static Margin ofStock(Stock stock, double content, double scale) {
        Margin margin = new Margin(-scale * content);
        margin.stock = stock.number();
        margin.stockWeight = scale;
        return margin;
    }

    /** Adds a weight times a node's temperature; no more than two nodes. */
    public Margin plus(double byWeight, int ofNode) {
        if (weight == 0 || node == ofNode) {
            node = ofNode;
            weight += byWeight;
        } else if (otherWeight == 0 || other == ofNode) {
            other = ofNode;
            otherWeight += byWeight;
        } else {
            throw new IllegalArgumentException("a margin of a third node, expected two at most");
        }
        return this;
    }

    /** Moves the threshold. */
    public void setConstant(double newConstant) {
        constant = newConstant;
    }

    /** The margin at a state. */
    public double at(State state) {
        double sum = constant + weight * state.nodeC(node) + otherWeight * state.nodeC(other);
        return stock < 0 ? sum : sum + stockWeight * state.stock(stock);
    }

    /** How fast it changes at a state whose temperatures and stocks are speeds. */
    public double speed(State perS) {
        return at(perS) - constant;
    }

    /** Whether it looks at a node. */
    public boolean looksAt(int ofNode) {
        return (node == ofNode && weight != 0) || (other == ofNode && otherWeight != 0);
    }
}
