package org.warmvat.network.meter;

import java.util.function.ToDoubleFunction;

/**
 * Something followed over a run from hour to hour or from day to day.
 *
 * @param <T> what it is taken from: an hour or the sums of a day
 * @param over what is kept of it over days, months and the whole
 * @param value its value in an hour or a day
 */
public record Followed<T>(Over over, ToDoubleFunction<T> value) {

    /** What is kept of many values. */
    public enum Over {
        /** Their sum. */
        SUM(0),
        /** The least. */
        LEAST(Double.POSITIVE_INFINITY),
        /** The largest. */
        MOST(Double.NEGATIVE_INFINITY),
        /** The largest, no less than 0. */
        PEAK(0);

        private final double none;

        Over(double none) {
            this.none = none;
        }

        /** What is kept of no values. */
        public double none() {
            return none;
        }

        /** What is kept of two. */
        public double join(double one, double other) {
            return switch (this) {
                case SUM -> one + other;
                case LEAST -> Math.min(one, other);
                case MOST, PEAK -> Math.max(one, other);
            };
        }
    }
}
