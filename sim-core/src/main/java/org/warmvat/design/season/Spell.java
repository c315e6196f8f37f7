package org.warmvat.design.season;

import java.time.MonthDay;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * A stretch of the year that returns every year and in which some numbers are others (equation 12.1).
 *
 * @param statedName its name; absent: its days
 * @param from first day, from 0:00; not 29 February
 * @param to last day, up to 24:00; before the first day: across new year
 * @param rampDays days over which feed and set-point run to their new values, 0 up to the length of the spell
 * @param control what is held
 * @param feed what is fed
 * @param mixerMinutesPerHour minutes the mixer runs in each hour
 * @param circuits what runs
 */
public record Spell(
        @Key(
                name = "name",
                says = "Name of the spell",
                pattern = "\\S",
                form = "text that is not blank",
                otherwise = "its days")
        Optional<String> statedName,

        @Key(name = "from", says = "First day, from 0:00; the same every year", pattern = DAY, form = DAY_FORM)
        MonthDay from,

        @Key(
                name = "to",
                says = "Last day, up to 24:00; before the first day: across new year",
                pattern = DAY,
                form = DAY_FORM)
        MonthDay to,

        @Key(
                name = "ramp_days",
                says =
                        "Days over which feed factor and set-point run in a straight line from what held before, by steps at midnight",
                range = "0 to 365 days",
                usual = "0")
        int rampDays,

        @Key HeldAt control,
        @Key Fed feed,

        @Key(name = "mixer_minutes_per_hour", says = "Minutes the mixer runs in each hour", range = "0 to 60 min/h")
        OptionalDouble mixerMinutesPerHour,

        @Key Runs circuits) {

    /** Name of the days in no spell. */
    public static final String OUTSIDE = "outside";

    /** Pattern of a day of every year. */
    static final String DAY =
            "^((0[13578]|1[02])-(0[1-9]|[12][0-9]|3[01])|(0[469]|11)-(0[1-9]|[12][0-9]|30)|02-(0[1-9]|1[0-9]|2[0-8]))$";

    /** What such a day looks like. */
    static final String DAY_FORM = "a day of every year such as \"11-16\"";

    /** Pattern of on and off. */
    static final String ON_OFF = "^(on|off)$";

    private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);
    private static final int YEAR = 365;
    private static final int NO_LEAP_YEAR = 2025;

    /** Refuses a leap day, numbers out of range and a ramp longer than the spell. */
    public Spell {
        Ranges.check(Spell.class, statedName, from, to, rampDays, control, feed, mixerMinutesPerHour, circuits);
        Ranges.stated(
                !statedName.equals(Optional.of(OUTSIDE)),
                "name",
                "outside, expected another: it stands for the days in no spell");
        Ranges.stated(!from.equals(LEAP_DAY), "from", "02-29, expected a day of every year");
        Ranges.stated(!to.equals(LEAP_DAY), "to", "02-29, expected a day of every year");
        int days = lengthDays(from, to);
        Ranges.stated(
                rampDays <= days,
                "ramp_days",
                rampDays + ", expected up to the length of the spell, " + days + " days");
    }

    /** Its name: as stated, else its days, such as {@code 11-16 to 03-10}. */
    public String name() {
        return statedName.orElseGet(
                () -> from.toString().substring(2) + " to " + to.toString().substring(2));
    }

    /**
     * What is held in a spell; empty as before.
     *
     * @param setpointC set-point, C
     * @param bandK band of the thermostat, K
     * @param minimum temperature below which an hour is short
     */
    public record HeldAt(
            @Key(name = "setpoint_c", says = "Temperature the contents are held at", range = "5 to 75 C")
            OptionalDouble setpointC,

            @Key(name = "band_k", says = "Whole width of the thermostat's band", range = "0.05 to 20 K")
            OptionalDouble bandK,

            @Key Optional<Minimum> minimum) {

        /** Refuses numbers out of range. */
        public HeldAt {
            Ranges.check(HeldAt.class, setpointC, bandK, minimum);
        }
    }

    /**
     * What is fed in a spell; empty as before.
     *
     * @param factor times every feedstock and the water
     * @param feedstocks factors of single feedstocks by name, on top
     */
    public record Fed(
            @Key(name = "feed_factor", says = "Times every feedstock and the dilution water", range = "0 to 3")
            OptionalDouble factor,

            @Key(
                    name = "feedstocks",
                    says = "Times single feedstocks by name, on top of feed_factor",
                    range = "0 to 3",
                    usual = "{}",
                    quiet = true)
            Map<String, Double> feedstocks) {

        /** Refuses factors out of range. */
        public Fed {
            feedstocks = Collections.unmodifiableMap(new LinkedHashMap<>(feedstocks));
            Ranges.check(Fed.class, factor, feedstocks);
        }
    }

    /**
     * What runs in a spell; empty as before.
     *
     * @param solar whether the solar pump may run
     * @param backup whether the backup heater may run
     * @param exchanger whether the effluent exchanger works
     */
    public record Runs(
            @Key(name = "solar", says = "Whether the solar pump may run", pattern = ON_OFF, form = "on or off")
            Optional<Boolean> solar,

            @Key(name = "backup", says = "Whether the backup heater may run", pattern = ON_OFF, form = "on or off")
            Optional<Boolean> backup,

            @Key(
                    name = "effluent_exchanger",
                    says = "Whether the effluent exchanger works",
                    pattern = ON_OFF,
                    form = "on or off")
            Optional<Boolean> exchanger) {}

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
