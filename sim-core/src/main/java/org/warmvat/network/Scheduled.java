package org.warmvat.network;

/**
 * Something that may jump at announced times and is told of each interval between jumps.
 *
 * <p>It belongs to one run and one thread: it may keep what is constant over the interval it has entered.
 */
public interface Scheduled {

    /**
     * The next time at which it jumps by a schedule, strictly after a time; hour edges are known to the engine and need not be
     * announced.
     *
     * @param timeS seconds since the start of the weather file
     * @return seconds since the start of the weather file, infinite when nothing is scheduled
     */
    default double nextJumpS(double timeS) {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Enters an interval within which nothing scheduled jumps.
     *
     * @param interval the interval, inside one weather hour
     */
    default void enter(Interval interval) {}
}
