package org.warmvat.design.heating;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/** The contents' temperature at which the solar pump stops. */
public sealed interface HighLimit {

    /** The temperature at a set-point, C. */
    double celsius(double setpointC);

    /**
     * So far above the set-point in force.
     *
     * @param kelvin K
     */
    record AboveSetpoint(
            @Key(
                    name = "limit_above_setpoint_k",
                    says = "How far above the set-point the sun may warm the contents",
                    range = "0 to 60 K",
                    usual = "3.5")
            double kelvin)
            implements HighLimit {

        /** Refuses a number out of range. */
        public AboveSetpoint {
            Ranges.check(AboveSetpoint.class, kelvin);
        }

        @Override
        public double celsius(double setpointC) {
            return setpointC + kelvin;
        }
    }

    /**
     * Always the same.
     *
     * @param celsius C
     */
    record At(
            @Key(
                    name = "tank_high_limit_c",
                    says = "Contents at which the pump stops, instead of limit_above_setpoint_k",
                    range = "0 to 100 C")
            double celsius)
            implements HighLimit {

        /** Refuses a temperature out of range. */
        public At {
            Ranges.check(At.class, celsius);
        }

        @Override
        public double celsius(double setpointC) {
            return celsius;
        }
    }
}
