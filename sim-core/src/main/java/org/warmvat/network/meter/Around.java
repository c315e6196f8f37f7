package org.warmvat.network.meter;

import java.util.function.UnaryOperator;

/**
 * What is around the tank: outdoor air, a room or a shelter.
 *
 * @param node its temperature
 * @param counted what it adds to the meter of a loss into it, so that its own account has it too
 */
public record Around(int node, UnaryOperator<Meter> counted) {

    /** Air or a room of which no account is kept. */
    public static Around uncounted(int node) {
        return new Around(node, UnaryOperator.identity());
    }

    /** The meter of heat that something of the tank receives from it: losses are negative. */
    public Meter met(Meter meter) {
        return counted.apply(meter);
    }
}
