package org.warmvat.network;

/**
 * Something of the tank that keeps its pieces of the network up to date. It belongs to one run and one thread.
 *
 * <p>Order in which an engine asks: {@link #enter} once an interval; {@link #look} at an instant; then {@link #decay}, then
 * {@link #ask} at a state whose known nodes are those of that instant.
 */
public interface Part {

    /**
     * The next time at which it jumps by a schedule, strictly after a time; hour edges are known to the engine and need not be
     * announced.
     *
     * @param timeS seconds since the start of the weather
     * @return the same, infinite when nothing is scheduled
     */
    default double nextJumpS(double timeS) {
        return Double.POSITIVE_INFINITY;
    }

    /** Enters an interval within which nothing scheduled jumps. */
    default void enter(Interval interval) {}

    /**
     * Renews what depends on time alone: known temperatures, films, conductances.
     *
     * @param timeS the instant
     * @param state where known temperatures are written; nothing else of it may be read
     */
    default void look(double timeS, State state) {}

    /** Renews gain and loss of stocks at a state. */
    default void decay(State state) {}

    /** Renews the sources that depend on the state. */
    default void ask(double timeS, State state) {}

    /**
     * Is told of the state at the end of each interval. An engine may live an hour twice, so what is kept must be kept by time.
     */
    default void reached(double timeS, State state) {}
}
