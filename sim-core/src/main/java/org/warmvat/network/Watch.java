package org.warmvat.network;

import java.util.function.ToDoubleFunction;

/**
 * A condition on the state whose duration is counted and whose worst margin is kept.
 *
 * @param name its name
 * @param gate when it is looked at
 * @param margin by how much it holds: positive while it does; continuous between jumps and switchings
 */
public record Watch(String name, Gate gate, ToDoubleFunction<State> margin) {

    /** By how much the condition holds, minus infinity while nobody looks. */
    public double at(State state) {
        return gate.isOpen(state) ? margin.applyAsDouble(state) : Double.NEGATIVE_INFINITY;
    }
}
