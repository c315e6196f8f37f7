package org.warmvat.cli.answer.year;

import org.warmvat.account.Period;
import org.warmvat.tank.KeyFigures;

/** Whether the slurry kept above its floor. */
enum Warmth {
    /** Never below the floor. */
    ALWAYS,
    /** Below it at times. */
    SHORT_AT_TIMES,
    /** Below it all the time. */
    NEVER;

    /** A second in a year: what rounding may leave of a whole run below the floor. */
    private static final double ROUNDING_HOURS = 1.0 / 3600;

    static Warmth of(Period period) {
        double below = period.of(KeyFigures.BELOW_FLOOR_HOURS);
        if (below == 0) {
            return ALWAYS;
        }
        return below >= period.hours() - ROUNDING_HOURS ? NEVER : SHORT_AT_TIMES;
    }
}
