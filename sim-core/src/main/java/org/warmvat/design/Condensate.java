package org.warmvat.design;

/** How far the gas cools in its pipe, where its water falls out (equation 14.3). */
public sealed interface Condensate {

    /** To the outside air. */
    record Air() implements Condensate {}

    /** To the ground. */
    record Ground() implements Condensate {}

    /**
     * To a stated temperature.
     *
     * @param celsius temperature, C, -40..60
     */
    record Fixed(double celsius) implements Condensate {

        /** Refuses a temperature out of range. */
        public Fixed {
            Ranges.within("temperature to which gas cools in C", celsius, -40, 60);
        }
    }
}
