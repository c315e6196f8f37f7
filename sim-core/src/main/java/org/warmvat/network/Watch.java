package org.warmvat.network;

/** A condition on the state whose duration is counted and whose worst margin is kept. */
@FunctionalInterface
public interface Watch {

    /**
     * By how much the condition holds: positive while it does, negative otherwise; continuous between jumps and switchings.
     *
     * @param timeS seconds since the start of the weather file
     * @param state temperatures and switch positions
     */
    double margin(double timeS, State state);
}
