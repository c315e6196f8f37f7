package org.warmvat.design.season;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/** The minimum temperature, below which an hour is short. */
public sealed interface Minimum {

    /** The temperature at a set-point, C; minus infinity where no hour is short. */
    double celsius(double setpointC);

    /**
     * So far below the set-point in force.
     *
     * @param kelvin K
     */
    record BelowSetpoint(
            @Key(
                    name = "floor_below_setpoint_k",
                    also = "minimum_below_setpoint_k",
                    says = "How far below the set-point an hour is short",
                    range = "0 to 60 K",
                    usual = "2.0")
            double kelvin)
            implements Minimum {

        /** Refuses a number out of range. */
        public BelowSetpoint {
            Ranges.check(BelowSetpoint.class, kelvin);
        }

        @Override
        public double celsius(double setpointC) {
            return setpointC - kelvin;
        }
    }

    /**
     * Always the same.
     *
     * @param celsius C
     */
    record At(
            @Key(
                    name = "floor_c",
                    also = "minimum_c",
                    says = "Minimum temperature, below which an hour is short, instead of minimum_below_setpoint_k",
                    range = "-10 to 75 C")
            double celsius)
            implements Minimum {

        /** Refuses a temperature out of range. */
        public At {
            Ranges.check(At.class, celsius);
        }

        @Override
        public double celsius(double setpointC) {
            return celsius;
        }
    }

    /**
     * No hour is short.
     *
     * @param word the word that says so
     */
    record None(
            @Key(name = "floor", also = "minimum", says = "No hour is short; for spells of the calendar only")
            Nothing word)
            implements Minimum {

        /** By the only word for it. */
        public None() {
            this(Nothing.NONE);
        }

        @Override
        public double celsius(double setpointC) {
            return Double.NEGATIVE_INFINITY;
        }
    }

    /** The word for nothing. */
    enum Nothing {
        /** Nothing. */
        NONE
    }
}
