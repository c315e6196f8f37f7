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

    /** By how much the condition holds, minus infinity while nobody looks. */
    public double at(State state) {
        if (!always && !gate.isOpen(state)) {
            return Double.NEGATIVE_INFINITY;
        }
        // most are linear, and asked at either end of every segment
        return linear != null ? linear.at(state) : margin.applyAsDouble(state);
    }
}
