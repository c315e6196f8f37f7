package org.warmvat.design.feeding;

import java.util.OptionalDouble;
import org.warmvat.design.keys.AboutNumber;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * A feedstock's first-order rate at the reference temperature, 1/day, and how far it may be off.
 *
 * @param middle what is taken
 * @param statedLow what a poor batch has; absent: the middle less its usual spread
 * @param statedHigh what a rich batch has; absent: the middle and its usual spread
 */
public record DigestionRate(
        @Key(name = "middle", says = "What is taken", range = "0 to 5 1/day")
        double middle,

        @Key(name = "low", says = "What a poor batch has", range = "0 to 5 1/day")
        OptionalDouble statedLow,

        @Key(name = "high", says = "What a rich batch has", range = "0 to 5 1/day")
        OptionalDouble statedHigh)
        implements AboutNumber {

    /** Spread of a number that does not say its own (equation 19.4). */
    private static final double USUAL_SPREAD = 0.4;

    /** Refuses numbers out of range or out of order. */
    public DigestionRate {
        Ranges.check(DigestionRate.class, middle, statedLow, statedHigh);
        AboutNumber.checkOrder(middle, statedLow, statedHigh);
    }

    /** A number that does not say how far it may be off. */
    public static DigestionRate ofNumber(double middle) {
        return new DigestionRate(middle, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The same taken low, as it is, or high; then a plain number. */
    public DigestionRate at(Estimate estimate) {
        return switch (estimate) {
            case LOW -> ofNumber(statedLow.orElse(middle * (1 - USUAL_SPREAD)));
            case MIDDLE -> this;
            case HIGH -> ofNumber(statedHigh.orElse(middle * (1 + USUAL_SPREAD)));
        };
    }
}
