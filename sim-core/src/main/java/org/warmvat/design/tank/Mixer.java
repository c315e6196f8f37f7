package org.warmvat.design.tank;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * The paddle and its drive (equation 3.3).
 *
 * @param shaft power at the shaft, by torque and speed or given
 * @param driveEfficiency shaft over electric power
 * @param idleW electric power beside it while the mixer runs, W
 * @param minutesPerHour minutes it runs from the start of each hour
 */
public record Mixer(
        @Key Shaft shaft,

        @Key(
                name = "drive_efficiency",
                says = "Shaft power over electric power of motor and gear",
                range = "0.001 to 1",
                usual = "0.2")
        double driveEfficiency,

        @Key(
                name = "idle_w",
                says = "Electric power drawn beside it while the mixer runs",
                range = "0 to 10000 W",
                usual = "6")
        double idleW,

        @Key(
                name = "minutes_per_hour",
                says = "Minutes it runs from the start of each hour",
                range = "0 to 60 min/h",
                usual = "60")
        double minutesPerHour) {

    /** Refuses numbers out of range. */
    public Mixer {
        Ranges.check(Mixer.class, shaft, driveEfficiency, idleW, minutesPerHour);
    }

    /** Power at the shaft while it runs, W: it becomes heat of the contents. */
    public double shaftW() {
        return shaft.powerW();
    }

    /** Electric power while it runs, W. */
    public double electricW() {
        return shaft.powerW() / driveEfficiency + idleW;
    }

    /** Power at the shaft. */
    public sealed interface Shaft {

        /** W, while the mixer runs. */
        double powerW();
    }

    /**
     * Power from torque and speed.
     *
     * @param revolutionsPerHour speed, 1/h
     * @param torqueNm torque, N m
     */
    public record Turning(
            @Key(
                    name = "revolutions_per_hour",
                    says = "Speed of the paddle while it runs",
                    range = "0 to 100000 1/h",
                    usual = "4")
            double revolutionsPerHour,

            @Key(name = "torque_nm", says = "Torque at the shaft", range = "0 to 100000 N m", usual = "60")
            double torqueNm)
            implements Shaft {

        /** Refuses numbers out of range. */
        public Turning {
            Ranges.check(Turning.class, revolutionsPerHour, torqueNm);
        }

        @Override
        public double powerW() {
            return 2 * Math.PI * (revolutionsPerHour / 3600) * torqueNm;
        }
    }

    /**
     * Power as given.
     *
     * @param powerW W
     */
    public record Given(
            @Key(
                    name = "shaft_w",
                    says = "Power at the shaft, instead of speed and torque; it becomes heat of the contents",
                    range = "0 to 100000 W")
            double powerW)
            implements Shaft {

        /** Refuses a power out of range. */
        public Given {
            Ranges.check(Given.class, powerW);
        }
    }
}
