package org.warmvat.design.surroundings;

/** What is under the floor of the tank. */
public enum StandsOn {
    /** Legs: moving air below the floor. */
    LEGS,
    /** The ground, through a soil resistance. */
    GROUND
}
