package org.warmvat.design.gas;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Word;

/** How far the gas cools in its pipe, where its water falls out (equation 14.3). */
public sealed interface Condensate {

    /** To the outside air. */
    @Word("air")
    record Air() implements Condensate {}

    /** To the ground. */
    @Word("ground")
    record Ground() implements Condensate {}

    /**
     * To a stated temperature.
     *
     * @param celsius temperature, C
     */
    record Fixed(
            @Key(name = "fixed_c", says = "Always to this temperature", range = "-40 to 60 C")
            double celsius) implements Condensate {

        /** Refuses a temperature out of range. */
        public Fixed {
            Ranges.check(Fixed.class, celsius);
        }
    }
}
