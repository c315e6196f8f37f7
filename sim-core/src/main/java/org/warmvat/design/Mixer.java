package org.warmvat.design;

/**
 * The paddle and its drive (equation 3.3).
 *
 * @param shaft power at the shaft, by torque and speed or given
 * @param driveEfficiency shaft over electric power, above 0 and up to 1
 * @param idleW electric power beside it while the mixer runs, W, 0..10000
 * @param minutesPerHour minutes it runs from the start of each hour, 0..60
 */
public record Mixer(Shaft shaft, double driveEfficiency, double idleW, double minutesPerHour) {

    /** Refuses numbers out of range. */
    public Mixer {
        Ranges.above("drive efficiency", driveEfficiency, 0, 1);
        Ranges.within("idle power of the mixer in W", idleW, 0, 10_000);
        Ranges.within("mixer minutes per hour", minutesPerHour, 0, 60);
    }

    /** Power at the shaft while it runs, W: it becomes heat of the contents. */
    public double shaftW() {
        return shaft.powerW();
    }

    /** Electric power while it runs, W. */
    public double electricW() {
        return shaft.powerW() / driveEfficiency + idleW;
    }

    /** Seconds it runs from the start of each hour, s. */
    public double runSecondsPerHour() {
        return 60 * minutesPerHour;
    }

    /** Power at the shaft. */
    public sealed interface Shaft {

        /** W, while the mixer runs. */
        double powerW();
    }

    /**
     * Power from torque and speed.
     *
     * @param revolutionsPerHour speed, 1/h, 0..100000
     * @param torqueNm torque, N m, 0..100000
     */
    public record Turning(double revolutionsPerHour, double torqueNm) implements Shaft {

        /** Refuses numbers out of range. */
        public Turning {
            Ranges.within("revolutions per hour", revolutionsPerHour, 0, 100_000);
            Ranges.within("torque in N m", torqueNm, 0, 100_000);
        }

        @Override
        public double powerW() {
            return 2 * Math.PI * (revolutionsPerHour / 3600) * torqueNm;
        }
    }

    /**
     * Power as given.
     *
     * @param powerW W, 0..100000
     */
    public record Given(double powerW) implements Shaft {

        /** Refuses a power out of range. */
        public Given {
            Ranges.within("shaft power in W", powerW, 0, 100_000);
        }
    }
}
