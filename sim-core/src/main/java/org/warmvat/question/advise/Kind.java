package org.warmvat.question.advise;

/** What a recommendation is about, in the order in which they are told: what can hurt, what leaves the tank cold, then net energy. */
public enum Kind {
    /** A number that is most likely a slip: nothing else is worth saying before it is mended. */
    SLIP,
    /** Too much dosed air in the gas. */
    AIR,
    /** Hotter than digestion bears. */
    TOO_HOT,
    /** A solar loop that freezes and bursts. */
    FROZEN_LOOP,
    /** A pipe that freezes and blocks. */
    FROZEN_PIPE,
    /** A collector that stands in the sun with its pump still. */
    STAGNATION,
    /** A heater that is absent, too small, or without reserve for a colder week. */
    HEATER,
    /** A coil that does not pass what the tank needs. */
    BACKUP_COIL,
    /** A tank that cools far within a day when its heater or the power fails. */
    FAILURE,
    /** More insulation. */
    INSULATION,
    /** More collector. */
    COLLECTOR,
    /** The fitting that loses most. */
    FITTING,
    /** Another set-point. */
    SETPOINT,
    /** Less mixing. */
    MIXER;

    /** Whether what it mends can hurt. */
    public boolean hurts() {
        return compareTo(HEATER) < 0;
    }

    /** Whether it is about the tank's net energy alone. */
    public boolean isEnergy() {
        return compareTo(FAILURE) > 0;
    }
}
