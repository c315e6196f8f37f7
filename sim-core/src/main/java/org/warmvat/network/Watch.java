package org.warmvat.network;

import java.util.function.ToDoubleFunction;

/**
 * A condition on the state whose duration is counted and whose worst margin is kept: by how much it holds, positive while it does, and
 * continuous between jumps and switchings.
 */
public final class Watch {

    private final String name;
    private final Gate gate;
    private final boolean always;
    private final Margin linear;
    private final ToDoubleFunction<State> margin;

    /**
     * A condition.
     *
     * @param name its name
     * @param gate when it is looked at
     * @param margin by how much it holds
     */
    public Watch(String name, Gate gate, ToDoubleFunction<State> margin) {
        this(name, gate, null, margin);
    }

    /** The same of a margin that is linear in the temperatures. */
    public Watch(String name, Gate gate, Margin margin) {
        this(name, gate, margin, margin::at);
    }

    private Watch(String name, Gate gate, Margin linear, ToDoubleFunction<State> margin) {
        this.name = name;
        this.gate = gate;
        always = gate.equals(Gate.OPEN);
        this.linear = linear;
        this.margin = margin;
    }

    /** Its name. */
    public String name() {
        return name;
    }

    /** When it is looked at. */
    public Gate gate() {
        return gate;
    }

    /** The node that it always looks at, against a threshold that stays, or {@link Network#NOWHERE}. */
    public int alwaysAt() {
        return always && linear != null ? linear.onlyNode() : Network.NOWHERE;
    }

    /** Its margin where that is linear in the temperatures, else null. */
    public Margin linear() {
        return linear;
    }

    /** By how much the condition holds while it is looked at. */
    public double margin(State state) {
        return linear != null ? linear.at(state) : margin.applyAsDouble(state);
    }

    /** By how much the condition holds, minus infinity while nobody looks. */
    public double at(State state) {
        return always || gate.isOpen(state) ? margin(state) : Double.NEGATIVE_INFINITY;
    }
}
