package org.warmvat.design.keys;

import java.util.OptionalDouble;

/**
 * A record that a file may write as one number, or as that number between a low and a high one; it has a static factory {@code
 * ofNumber(double)}.
 */
public interface AboutNumber {

    /** The number itself. */
    double middle();

    /** How low it may be, where that is said. */
    OptionalDouble statedLow();

    /** How high it may be, where that is said. */
    OptionalDouble statedHigh();

    /** Whether there is nothing beside the number. */
    default boolean plain() {
        return statedLow().isEmpty() && statedHigh().isEmpty();
    }

    /** Refuses a number that is not between its low and high ones. */
    static void checkOrder(double middle, OptionalDouble low, OptionalDouble high) {
        Ranges.stated(
                low.orElse(middle) <= middle && high.orElse(middle) >= middle,
                "middle",
                Shown.number(middle) + ", expected between low and high");
    }
}
