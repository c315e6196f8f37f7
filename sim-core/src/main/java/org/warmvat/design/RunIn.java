package org.warmvat.design;

import java.util.OptionalInt;

/**
 * How long a year is run in before its first hour counts.
 *
 * @param days days as given, 0..3660; absent: from the time constant
 * @param leastDays least days where it follows from the time constant, 0..3660
 * @param timeConstants thermal time constants to run in, 0..20
 * @param mostDays most days where it follows from the time constant, from the least to 3660
 */
public record RunIn(OptionalInt days, int leastDays, double timeConstants, int mostDays) {

    /** Refuses numbers out of range. */
    public RunIn {
        days.ifPresent(d -> Ranges.within("run-in in days", d, 0, 3660));
        Ranges.within("least run-in in days", leastDays, 0, 3660);
        Ranges.within("time constants of run-in", timeConstants, 0, 20);
        Ranges.within("most run-in in days", mostDays, leastDays, 3660);
    }

    /**
     * Whole days of run-in.
     *
     * @param slurryTimeConstantS thermal time constant {@code C_s/UA}, s, above 0
     */
    public int daysFor(double slurryTimeConstantS) {
        double wanted = Math.ceil(timeConstants * slurryTimeConstantS / DailyWindow.DAY_S);
        return days.orElse((int) Math.min(Math.max(leastDays, wanted), mostDays));
    }
}
