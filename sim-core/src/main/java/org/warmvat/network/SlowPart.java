package org.warmvat.network;

/**
 * Something of the tank that depends on time alone, such as what its envelope meets outside, so that an engine need not know any
 * temperature to ask and asks once for an instant.
 */
@FunctionalInterface
public interface SlowPart extends Scheduled {

    /**
     * Adds what flows into nodes and meters at an instant of the interval entered. Which steady-starting nodes receive anything
     * besides what their links carry is the same throughout a run.
     *
     * @param timeS seconds since the start of the weather file
     * @param flows where to add exchanges, heats that depend on no temperature, and meters' rates
     */
    void surround(double timeS, Flows flows);
}
