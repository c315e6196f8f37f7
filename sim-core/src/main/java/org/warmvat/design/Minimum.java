package org.warmvat.design;

/** The temperature below which an hour is short. */
public sealed interface Minimum {

    /** It at a set-point, °C; negative infinity where no hour is short. */
    double celsius(double setpointC);

    /**
     * A stated temperature.
     *
     * @param minimumC temperature, C, -10..75
     */
    record At(double minimumC) implements Minimum {

        /** Refuses a temperature out of range. */
        public At {
            Ranges.within("minimum temperature in C", minimumC, -10, 75);
        }

        @Override
        public double celsius(double setpointC) {
            return minimumC;
        }
    }

    /**
     * Some way below the set-point in force.
     *
     * @param kelvin how far, K, 0..60
     */
    record BelowSetpoint(double kelvin) implements Minimum {

        /** Refuses a difference out of range. */
        public BelowSetpoint {
            Ranges.within("minimum temperature below the set-point in K", kelvin, 0, 60);
        }

        @Override
        public double celsius(double setpointC) {
            return setpointC - kelvin;
        }
    }

    /** None: no hour is short. */
    record None() implements Minimum {

        @Override
        public double celsius(double setpointC) {
            return Double.NEGATIVE_INFINITY;
        }
    }
}
