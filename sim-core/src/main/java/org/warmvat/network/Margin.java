package org.warmvat.network;

import java.util.Arrays;

/**
 * How far a state is beyond a threshold: a constant and weights of temperatures and of a stock. Zero or more means reached.
 */
public final class Margin {

    private double constant;
    private int[] node = new int[0];
    private double[] weight = new double[0];
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

    /** Adds a weight times a node's temperature. */
    public Margin plus(double byWeight, int ofNode) {
        node = Arrays.copyOf(node, node.length + 1);
        weight = Arrays.copyOf(weight, node.length);
        node[node.length - 1] = ofNode;
        weight[node.length - 1] = byWeight;
        return this;
    }

    /** Moves the threshold. */
    public void setConstant(double newConstant) {
        constant = newConstant;
    }

    /** The margin at a state. */
    public double at(State state) {
        double sum = constant;
        for (int i = 0; i < node.length; i++) {
            sum += weight[i] * state.nodeC(node[i]);
        }
        return stock < 0 ? sum : sum + stockWeight * state.stock(stock);
    }

    /** How fast it changes at a state whose temperatures and stocks are speeds. */
    public double speed(State perS) {
        return at(perS) - constant;
    }

    /** Whether it looks at a node. */
    public boolean looksAt(int ofNode) {
        for (int one : node) {
            if (one == ofNode) {
                return true;
            }
        }
        return false;
    }
}
