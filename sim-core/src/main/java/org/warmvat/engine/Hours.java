package org.warmvat.engine;

/**
 * A run of consecutive weather hours.
 *
 * @param first index of the first hour
 * @param end index after the last hour
 */
public record Hours(int first, int end) {

    /** Length of an hour, s. */
    public static final double HOUR_S = 3600;

    /** Checks that the hours run forward. */
    public Hours {
        if (first < 0 || end < first) {
            throw new IllegalArgumentException("hours " + first + " to " + end + ", expected 0 <= first <= end");
        }
    }
}
