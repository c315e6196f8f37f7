package org.warmvat.question.hold;

import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.tank.Course;

/**
 * How long a tank stays warm when its heat fails, and how long it takes to warm up.
 *
 * @param temperaturesC temperatures asked for, °C, the highest first
 * @param timeConstantH thermal time constant {@code C_s/UA} at the file's mean wind, h
 * @param failures what fails: the heater, where there is one, and the power
 * @param leftOut hours asked for that were not tried, since no minimum holds then or the tank is warming up after a rest
 * @param warmUps the warm-up from cold, with the sun and without
 */
public record HoldResult(
        List<Double> temperaturesC, double timeConstantH, List<Failure> failures, int leftOut, List<WarmUp> warmUps) {

    /** What fails. */
    public enum Cause {
        /** The backup circuit stands still; sun, mixer and feed go on. */
        HEATER,
        /** Pumps, mixer and feed stop, and with them both circuits. */
        POWER
    }

    /**
     * A failure at the worst moments.
     *
     * @param cause what fails
     * @param worst for each temperature the worst moment
     * @param usual over all starts asked for: how the hours until the first temperature are spread
     * @param course hour by hour from the worst moment of the first temperature
     */
    public record Failure(Cause cause, List<Moment> worst, Usual usual, Course course) {

        /** The worst moment of the first temperature. */
        public LocalDateTime from() {
            return worst.get(0).from();
        }

        /** Slurry temperature then. */
        public double startC() {
            return worst.get(0).startC();
        }

        /** Hours until each temperature from its worst moment, absent when it is not reached while followed. */
        public List<OptionalDouble> hours() {
            return worst.stream().map(Moment::hours).toList();
        }
    }

    /**
     * The worst moment for a temperature.
     *
     * @param from the start from which it is reached soonest; the first of several
     * @param startC slurry temperature then
     * @param hours hours until it is reached, absent when it is not while the weather lasts or within the limit
     */
    public record Moment(LocalDateTime from, double startC, OptionalDouble hours) {}

    /**
     * Hours until the first temperature over all starts.
     *
     * @param starts how many starts
     * @param followed how many of them reach it or have weather left for the whole limit
     * @param worstByMonth shortest by calendar month of the start, January first; absent where no start lies there or none
     *     reaches it within the limit
     * @param middleHours middle value of those followed, absent when it is not reached within the limit
     * @param limitHours how long each start was followed
     */
    public record Usual(
            int starts, int followed, List<OptionalDouble> worstByMonth, OptionalDouble middleHours, int limitHours) {}

    /**
     * A warm-up from a cold fill.
     *
     * @param withSun whether the solar circuit helped
     * @param from when it began
     * @param fillC temperature of the fill
     * @param hours hours until the set-point, absent when it is not reached
     * @param heat what it took until then
     * @param course hour by hour
     */
    public record WarmUp(
            boolean withSun, LocalDateTime from, double fillC, OptionalDouble hours, WarmUpHeat heat, Course course) {}

    /**
     * Heat of a warm-up until the end of the hour in which the set-point was reached, or of the whole trial.
     *
     * @param solarKWh from the sun
     * @param backupKWh from the backup into the slurry
     * @param boughtKWh what the backup bought for it
     */
    public record WarmUpHeat(double solarKWh, double backupKWh, double boughtKWh) {}
}
