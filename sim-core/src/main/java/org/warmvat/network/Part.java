package org.warmvat.network;

/** Something of the tank that temperatures, stocks and switches drive: heat, gas or electricity flows as they stand. */
@FunctionalInterface
public interface Part extends Scheduled {

    /**
     * Adds what flows into live nodes, stocks and meters at an instant of the interval entered.
     *
     * @param timeS seconds since the start of the weather file
     * @param state temperatures of the live nodes, stocks and switch positions
     * @param flows where to add
     */
    void contribute(double timeS, State state, Flows flows);
}
