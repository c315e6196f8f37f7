package org.warmvat.network;

/** Whether something is on, by the positions of switches and by the interval entered; temperatures do not matter. */
@FunctionalInterface
public interface Gate {

    /** Always on. */
    Gate OPEN = state -> true;

    /** Never on. */
    Gate SHUT = state -> false;

    /** Whether it is on. */
    boolean isOpen(State state);
}
