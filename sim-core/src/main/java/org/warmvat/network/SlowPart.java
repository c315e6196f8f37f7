package org.warmvat.network;

/**
 * Something of the tank that knows of no circuit and no switch, such as its envelope. What it tells of the layers depends on
 * time alone, so that an engine may ask before it knows their temperatures.
 */
@FunctionalInterface
public interface SlowPart extends Scheduled {

    /**
     * Adds what flows into the slurry, into the steady-starting nodes with their links to their parents, into the stocks and
     * meters at an instant of the interval entered. Flows into steady-starting nodes depend on time alone, the others on the
     * slurry's temperature and the stocks besides. Which steady-starting nodes receive anything but by their links is the same
     * throughout a run; links seldom change, if ever, since an engine may work out much from them once.
     *
     * @param timeS seconds since the start of the weather file
     * @param state temperature of the slurry and stocks
     * @param flows where to add
     */
    void surround(double timeS, State state, Flows flows);
}
