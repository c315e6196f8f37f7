package org.warmvat.design.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The numbers in force on each of the 365 days of a year, the same every year (equations 12.1 to 12.3). 29 February has those of the
 * 28th. Immutable.
 */
public final class SeasonTable {

    /** Days in the table. */
    public static final int DAYS = 365;

    private static final int LEAP_DAY = 59;

    private final SeasonCalendar calendar;
    private final Day[] days;
    private final boolean[] grace;

    /**
     * What holds without any spell.
     *
     * @param setpointC set-point, °C
     * @param bandK band of the thermostat, K
     * @param minimum temperature below which an hour is short
     * @param mixerMinutesPerHour minutes the mixer runs in each hour
     * @param feedstocks names of the feedstocks
     * @param hasSolar whether there is a solar circuit
     * @param hasBackup whether there is a backup heater
     */
    public record Base(
            double setpointC,
            double bandK,
            Minimum minimum,
            double mixerMinutesPerHour,
            List<String> feedstocks,
            boolean hasSolar,
            boolean hasBackup) {}

    /**
     * The numbers in force on one day.
     *
     * @param setpointC set-point, °C
     * @param bandK band of the thermostat, K
     * @param minimumC temperature below which an hour is short, °C; negative infinity where none is
     * @param waterFactor factor on the dilution water
     * @param feedstockFactors factors on the feedstocks, by their places in the design; read only
     * @param mixerMinutesPerHour minutes the mixer runs in each hour
     * @param isSolarOn whether the solar pump may run
     * @param isBackupOn whether the backup heater may run
     * @param isExchangerOn whether the effluent exchanger works
     */
    @SuppressWarnings("ArrayRecordComponent") // read only; asked in every interval
    public record Day(
            double setpointC,
            double bandK,
            double minimumC,
            double waterFactor,
            double[] feedstockFactors,
            double mixerMinutesPerHour,
            boolean isSolarOn,
            boolean isBackupOn,
            boolean isExchangerOn) {

        /** Factor on a feedstock, by its place in the design. */
        public double feedstockFactor(int feedstock) {
            return feedstockFactors[feedstock];
        }
    }

    /**
     * Works out a calendar.
     *
     * @throws IllegalArgumentException when ramps lean on one another round the year, so that none has a beginning
     */
    public SeasonTable(SeasonCalendar calendar, Base base) {
        this.calendar = calendar;
        double[] setpointC = new Ramps(
                        calendar.spells(), spell -> spell.control().setpointC(), base.setpointC(), "setpoint_c")
                .days();
        double[] feed = new Ramps(calendar.spells(), spell -> spell.feed().factor(), 1, "feed_factor").days();
        days = new Day[DAYS];
        for (int day = 0; day < DAYS; day++) {
            days[day] = onDay(base, day, setpointC[day], feed[day]);
        }
        grace = new boolean[DAYS];
        for (int day = 0; day < DAYS; day++) {
            grace[day] = hasGrace(base, day);
        }
    }

    private Day onDay(Base base, int day, double setpointC, double feedFactor) {
        Minimum minimum = last(day, spell -> spell.control().minimum()).orElse(base.minimum());
        double[] feedstocks = new double[base.feedstocks().size()];
        for (int i = 0; i < feedstocks.length; i++) {
            String name = base.feedstocks().get(i);
            feedstocks[i] = feedFactor
                    * last(
                                    day,
                                    spell -> Optional.ofNullable(
                                            spell.feed().feedstocks().get(name)))
                            .orElse(1.0);
        }
        return new Day(
                setpointC,
                number(day, spell -> boxed(spell.control().bandK()), base.bandK()),
                minimum.celsius(setpointC),
                feedFactor,
                feedstocks,
                number(day, spell -> boxed(spell.mixerMinutesPerHour()), base.mixerMinutesPerHour()),
                last(day, spell -> spell.circuits().solar()).orElse(true),
                last(day, spell -> spell.circuits().backup()).orElse(true),
                last(day, spell -> spell.circuits().exchanger()).orElse(true));
    }

    private static Optional<Double> boxed(java.util.OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private double number(int day, Function<Spell, Optional<Double>> key, double otherwise) {
        return last(day, key).orElse(otherwise);
    }

    /** What the last spell of the day says that says anything. */
    private <T> Optional<T> last(int day, Function<Spell, Optional<T>> key) {
        for (int i = calendar.spells().size() - 1; i >= 0; i--) {
            Spell spell = calendar.spells().get(i);
            if (spell.dayOf(day) > 0 && key.apply(spell).isPresent()) {
                return key.apply(spell);
            }
        }
        return Optional.empty();
    }

    /** Equation 12.3: the set-point rose by more than 1 K, or a circuit came on again, within the days of grace. */
    private boolean hasGrace(Base base, int day) {
        for (int back = 1; back <= calendar.graceDays(); back++) {
            Day before = days[Math.floorMod(day - back, DAYS)];
            boolean rose = days[day].setpointC > before.setpointC + 1;
            boolean sun = base.hasSolar() && days[day].isSolarOn && !before.isSolarOn;
            boolean heater = base.hasBackup() && days[day].isBackupOn && !before.isBackupOn;
            if (rose || sun || heater) {
                return true;
            }
        }
        return false;
    }

    /** Place of a date in the table; 29 February has that of the 28th. */
    public static int dayOf(LocalDate date) {
        int day = date.getDayOfYear() - 1;
        return date.isLeapYear() && day >= LEAP_DAY ? day - 1 : day;
    }

    /** The spells worked out. */
    public SeasonCalendar calendar() {
        return calendar;
    }

    /** The numbers in force on a day, 0 on 1 January. */
    public Day on(int day) {
        return days[day];
    }

    /** Whether hours below the minimum are told apart as warming up. */
    public boolean isGrace(int day) {
        return grace[day];
    }

    /** The largest of a figure over the 365 days. */
    public double largest(ToDoubleFunction<Integer> figure) {
        double most = Double.NEGATIVE_INFINITY;
        for (int day = 0; day < DAYS; day++) {
            most = Math.max(most, figure.applyAsDouble(day));
        }
        return most;
    }
}
