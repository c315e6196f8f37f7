package org.warmvat.design;

import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A stretch of the year that returns every year and in which some numbers are others (equation 12.1).
 *
 * @param name its name
 * @param from first day, from 0:00; not 29 February
 * @param to last day, up to 24:00; before the first day: across new year
 * @param rampDays days over which feed and set-point run to their new values, 0 up to the length of the spell
 * @param control what is held
 * @param feed what is fed
 * @param mixerMinutesPerHour minutes the mixer runs in each hour, 0..60
 * @param circuits what runs
 */
public record Spell(
        String name,
        MonthDay from,
        MonthDay to,
        int rampDays,
        HeldAt control,
        Fed feed,
        OptionalDouble mixerMinutesPerHour,
        Runs circuits) {

    /** Name of the days in no spell. */
    public static final String OUTSIDE = "outside";

    private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);
    private static final int YEAR = 365;
    private static final int NO_LEAP_YEAR = 2025;

    /** Refuses a leap day, numbers out of range and a ramp longer than the spell. */
    public Spell {
        Ranges.named("spell", name);
        Ranges.stated("spell named " + name, !name.equals(OUTSIDE), "another name: it stands for the days in no spell");
        Ranges.stated("spell " + name + " begins on 02-29", !from.equals(LEAP_DAY), "a day of every year");
        Ranges.stated("spell " + name + " ends on 02-29", !to.equals(LEAP_DAY), "a day of every year");
        mixerMinutesPerHour.ifPresent(minutes -> Ranges.within("mixer minutes per hour of " + name, minutes, 0, 60));
        int days = lengthDays(from, to);
        Ranges.stated(
                "ramp of " + name + " over " + rampDays + " days",
                rampDays >= 0 && rampDays <= days,
                "0 to its length, " + days + " days");
    }

    /**
     * What is held in a spell; empty as before.
     *
     * @param setpointC set-point, C, 5..75
     * @param bandK band of the thermostat, K, 0.05..20
     * @param minimum temperature below which an hour is short
     */
    public record HeldAt(OptionalDouble setpointC, OptionalDouble bandK, Optional<Minimum> minimum) {

        /** Refuses numbers out of range. */
        public HeldAt {
            setpointC.ifPresent(c -> Ranges.within("set-point of a spell in C", c, 5, 75));
            bandK.ifPresent(k -> Ranges.within("thermostat band of a spell in K", k, 0.05, 20));
        }
    }

    /**
     * What is fed in a spell; empty as before.
     *
     * @param factor times every feedstock and the water, 0..3
     * @param feedstocks factors of single feedstocks by name, on top, 0..3
     */
    public record Fed(OptionalDouble factor, Map<String, Double> feedstocks) {

        /** Refuses factors out of range. */
        public Fed {
            factor.ifPresent(f -> Ranges.within("feed factor of a spell", f, 0, 3));
            feedstocks = new LinkedHashMap<>(feedstocks);
            feedstocks.forEach((name, f) -> Ranges.within("feed factor of " + name, f, 0, 3));
        }

        /** Factors of single feedstocks by name; read only. */
        @Override
        public Map<String, Double> feedstocks() {
            return Map.copyOf(feedstocks);
        }
    }

    /**
     * What runs in a spell; empty as before.
     *
     * @param solar whether the solar pump may run
     * @param backup whether the backup heater may run
     * @param exchanger whether the effluent exchanger works
     */
    public record Runs(Optional<Boolean> solar, Optional<Boolean> backup, Optional<Boolean> exchanger) {}

    private static int lengthDays(MonthDay from, MonthDay to) {
        return Math.floorMod(day(to) - day(from), YEAR) + 1;
    }

    private static int day(MonthDay date) {
        return date.atYear(NO_LEAP_YEAR).getDayOfYear() - 1;
    }

    /** Index of its first day, 0 on 1 January. */
    public int firstDay() {
        return day(from);
    }

    /** How many days it has. */
    public int lengthDays() {
        return lengthDays(from, to);
    }

    /** How many days of it have begun on a day of the year, 1 on its first; 0 outside. */
    public int dayOf(int dayOfYear) {
        int into = Math.floorMod(dayOfYear - firstDay(), YEAR);
        return into < lengthDays() ? into + 1 : 0;
    }
}
