package org.warmvat.design;

/** How warm a stream is when it is fed (equation 3.2). */
public sealed interface FeedTemperature {

    /**
     * Always the same.
     *
     * @param celsius temperature, C, -40..100
     */
    record Fixed(double celsius) implements FeedTemperature {

        /** Refuses a temperature out of range. */
        public Fixed {
            Ranges.within("fixed temperature in C", celsius, -40, 100);
        }
    }

    /** The mean air temperature of the 24 hours before. */
    record Air() implements FeedTemperature {}

    /** The ground's temperature. */
    record Ground() implements FeedTemperature {}

    /** The room's temperature, for a tank indoors. */
    record Room() implements FeedTemperature {}
}
