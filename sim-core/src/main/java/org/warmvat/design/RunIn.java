package org.warmvat.design;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.season.DailyWindow;

/** How long a year is run in before its first hour counts. */
public sealed interface RunIn {

    /**
     * Whole days of run-in.
     *
     * @param slurryTimeConstantS thermal time constant {@code C_s/UA}, s, above 0
     */
    int daysFor(double slurryTimeConstantS);

    /**
     * By the tank's time constant.
     *
     * @param leastDays least days
     * @param timeConstants thermal time constants to run in
     * @param mostDays most days
     */
    record ByTimeConstants(
            @Key(name = "least_days", says = "Least run-in", range = "0 to 3660 days", usual = "10")
            int leastDays,

            @Key(name = "time_constants", says = "Thermal time constants to run in", range = "0 to 20", usual = "3")
            double timeConstants,

            @Key(name = "most_days", says = "Most run-in", range = "0 to 3660 days", usual = "90")
            int mostDays)
            implements RunIn {

        /** Refuses numbers out of range. */
        public ByTimeConstants {
            Ranges.check(ByTimeConstants.class, leastDays, timeConstants, mostDays);
            Ranges.stated(
                    mostDays >= leastDays,
                    "most_days",
                    mostDays + ", expected least_days, " + leastDays + " days, or above");
        }

        @Override
        public int daysFor(double slurryTimeConstantS) {
            double wanted = Math.ceil(timeConstants * slurryTimeConstantS / DailyWindow.DAY_S);
            return (int) Math.min(Math.max(leastDays, wanted), mostDays);
        }
    }

    /**
     * So many days.
     *
     * @param days days
     */
    record Days(
            @Key(
                    name = "days",
                    says = "Days of run-in before the year, instead of by the tank's time constant",
                    range = "0 to 3660 days")
            int days)
            implements RunIn {

        /** Refuses a number out of range. */
        public Days {
            Ranges.check(Days.class, days);
        }

        @Override
        public int daysFor(double slurryTimeConstantS) {
            return days;
        }
    }
}
