package org.warmvat.design;

import java.util.Set;
import java.util.TreeSet;

/**
 * Something that burns gas from the holder (equation 14.2).
 *
 * @param name its name
 * @param kind what it is; changes words only
 * @param kw energy of the gas it draws while on, kW, above 0 and up to 1000
 * @param efficiency share of it that is of use, above 0 and up to 1
 * @param hours when it is wanted in the day
 * @param months when it is wanted in the year, 1..12
 */
public record GasUse(String name, Kind kind, double kw, double efficiency, DailySchedule hours, Set<Integer> months) {

    /** Kinds of uses. */
    public enum Kind {
        /** A cooker or another open flame. */
        BURNER,
        /** An engine, with or without a generator. */
        ENGINE,
        /** A lamp. */
        LAMP,
        /** A boiler or a stove. */
        BOILER
    }

    /** Refuses numbers out of range. */
    public GasUse {
        Ranges.named("gas use", name);
        Ranges.above("power of " + name + " in kW", kw, 0, 1000);
        Ranges.above("efficiency of " + name, efficiency, 0, 1);
        months = Set.copyOf(new TreeSet<>(months));
        Ranges.stated("months of " + name + " are none", !months.isEmpty(), "at least one");
        Ranges.stated(
                "months of " + name, months.stream().allMatch(month -> month >= 1 && month <= 12), "numbers 1 to 12");
    }
}
