package org.warmvat.design.feeding;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Word;

/** How warm a stream is when it is fed (equation 3.2). */
public sealed interface FeedTemperature {

    /** The mean air temperature of the 24 hours before. */
    @Word("air")
    record Air() implements FeedTemperature {}

    /** The ground's temperature. */
    @Word("ground")
    record Ground() implements FeedTemperature {}

    /** The room's temperature, for a tank indoors. */
    @Word("room")
    record Room() implements FeedTemperature {}

    /**
     * Always the same.
     *
     * @param celsius temperature, C
     */
    record Fixed(
            @Key(name = "fixed_c", says = "Always this warm", range = "-40 to 100 C")
            double celsius) implements FeedTemperature {

        /** Refuses a temperature out of range. */
        public Fixed {
            Ranges.check(Fixed.class, celsius);
        }
    }
}
