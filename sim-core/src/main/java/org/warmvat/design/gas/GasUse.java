package org.warmvat.design.gas;

import java.util.List;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.season.DailySchedule;

/**
 * Something that burns gas from the holder (equation 14.2).
 *
 * @param name its name
 * @param kind what it is; changes words only
 * @param kw energy of the gas it draws while on, kW
 * @param yield share of it that is of use
 * @param hours when it is wanted in the day
 * @param months when it is wanted in the year, 1..12
 */
public record GasUse(
        @Key(name = "name", says = "Name of the use", pattern = "\\S", form = "text that is not blank")
        String name,

        @Key(name = "kind", says = "What it is; changes words only")
        Kind kind,

        @Key(name = "kw", says = "Energy of the gas it draws while on", range = "0.001 to 1000 kW")
        double kw,

        @Key Yield yield,

        @Key(
                name = "hours",
                says = "When it is wanted in the day, as stretches that may cross midnight",
                entries = 1,
                usual = "[00:00-24:00]",
                pattern = DailySchedule.STRETCH,
                form = "a stretch such as \"22:00-06:00\"")
        DailySchedule hours,

        @Key(
                name = "months",
                says = "When it is wanted in the year, by the months' numbers",
                range = "1 to 12",
                entries = 1,
                usual = "[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]")
        List<Integer> months) {

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

    /** Share of the gas's energy that is of use. */
    public sealed interface Yield {

        /** The share. */
        double efficiency();
    }

    /**
     * As one number.
     *
     * @param efficiency share of the gas's energy that is of use
     */
    public record Whole(
            @Key(name = "efficiency", says = "Share of the gas's energy that is of use", range = "0.001 to 1")
            double efficiency)
            implements Yield {

        /** Refuses a share out of range. */
        public Whole {
            Ranges.check(Whole.class, efficiency);
        }
    }

    /**
     * Of an engine, apart.
     *
     * @param heatShare share that becomes heat of use; none of it goes to the tank
     * @param electricShare share that becomes electricity
     */
    public record Apart(
            @Key(
                    name = "heat_share",
                    says =
                            "Of an engine, share that becomes heat of use, instead of efficiency; it does not go to the tank",
                    range = "0 to 1")
            double heatShare,

            @Key(name = "electric_share", says = "Of an engine, share that becomes electricity", range = "0 to 1")
            double electricShare)
            implements Yield {

        /** Refuses shares out of range. */
        public Apart {
            Ranges.check(Apart.class, heatShare, electricShare);
            Ranges.stated(
                    heatShare + electricShare > 0 && heatShare + electricShare <= 1,
                    "heat_share",
                    "and electric_share, expected together above 0 and at most 1");
        }

        @Override
        public double efficiency() {
            return heatShare + electricShare;
        }
    }

    /** Refuses numbers out of range. */
    public GasUse {
        months = List.copyOf(months);
        Ranges.check(GasUse.class, name, kind, kw, yield, hours, months);
    }

    /** Share of the gas's energy that is of use. */
    public double efficiency() {
        return yield.efficiency();
    }
}
