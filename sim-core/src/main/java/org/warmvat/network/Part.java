package org.warmvat.network;

/**
 * Something of the tank through which heat, gas or electricity flows.
 *
 * <p>A part belongs to one run and one thread: it may keep what is constant over the interval it has entered.
 */
public interface Part {

    /**
     * The next time at which the part jumps by a schedule, strictly after a time; hour edges are known to the engine and
     * need not be announced.
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

    /**
     * Adds what flows at an instant of the interval entered.
     *
     * @param timeS seconds since the start of the weather file
     * @param state temperatures, stocks and switch positions
     * @param flows where to add
     */
    void contribute(double timeS, State state, Flows flows);
}
