package org.warmvat.question.backup;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.network.Warning;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.tank.Course;

/**
 * Which heater to buy.
 *
 * @param elementAssumed whether an element in the slurry was taken because the design has no backup
 * @param need the smallest heaters that meet each demand
 * @param coil whether coil and flow temperature, not the heater, are the limit
 * @param curve hours short and energy against power
 * @param warmUps the warm-up from cold in each file with the chosen heater, without the sun if it was ignored
 * @param spell the spell that decides the power
 * @param handbook what the handbook says
 */
public record BackupResult(
        boolean elementAssumed,
        Need need,
        Coil coil,
        Curve curve,
        List<HoldResult.WarmUp> warmUps,
        Spell spell,
        Handbook handbook) {

    /**
     * The smallest heaters, W; absent where no heater does it.
     *
     * @param forFloorW that keeps the hours short within the allowance in every file
     * @param forWarmUpW that warms up in time in every file
     * @param commonW the next common size up from the larger of both; absent when none is large enough
     */
    public record Need(OptionalDouble forFloorW, OptionalDouble forWarmUpW, OptionalDouble commonW) {

        /** The smallest heater that meets both demands, W. */
        public OptionalDouble smallestW() {
            return forFloorW.isPresent() && forWarmUpW.isPresent()
                    ? OptionalDouble.of(Math.max(forFloorW.getAsDouble(), forWarmUpW.getAsDouble()))
                    : OptionalDouble.empty();
        }

        /** The heater to buy: the common size, else the smallest itself, W. */
        public OptionalDouble chosenW() {
            return commonW.isPresent() ? commonW : smallestW();
        }
    }

    /**
     * The coil.
     *
     * @param passesW most heat the coil passes at set-point and flow limit, W; absent for an element in the slurry
     * @param isLimit whether even a heater without limit is not enough
     * @param areaM2 the design's coil area, m2; absent for an element
     * @param neededM2 coil area with which a heater without limit is enough, m2; present only where the coil is the limit and
     *     some area will do
     */
    public record Coil(OptionalDouble passesW, boolean isLimit, OptionalDouble areaM2, OptionalDouble neededM2) {}

    /**
     * Hours short against power.
     *
     * @param monotone whether more power never made more hours short than an hour's worth of switching
     * @param points by rising power, each in the worst of the files
     * @param chosen the chosen heater, or one without limit where none will do, in each of the files
     */
    public record Curve(boolean monotone, List<Point> points, List<Point> chosen) {}

    /**
     * One heater.
     *
     * @param ratedW its power
     * @param shortHours hours below the floor
     * @param shortKelvinHours degree-hours below the floor, K h
     * @param boughtKWh energy bought over the file
     * @param warnings what the user must know of its run
     */
    public record Point(
            double ratedW, double shortHours, double shortKelvinHours, double boughtKWh, List<Warning> warnings) {}

    /**
     * The coldest spell that decides.
     *
     * @param file index of the weather file
     * @param worst when the slurry is coldest with the smaller heater
     * @param chosenW power of the chosen heater, W
     * @param smallerW power of the smaller one, W
     * @param smallerShortHours hours short with the smaller one, in each of the files
     * @param chosen the spell with the chosen heater
     * @param smaller the spell with the smaller one
     */
    public record Spell(
            int file,
            LocalDateTime worst,
            double chosenW,
            double smallerW,
            List<Double> smallerShortHours,
            Course chosen,
            Course smaller) {}

    /**
     * The sum of the handbooks: steady loss in the coldest day's air plus the feed.
     *
     * @param coldC air of the coldest 24 hours of all files, °C
     * @param lossW steady loss, W
     * @param feedW mean heat of the feed, W
     */
    public record Handbook(double coldC, double lossW, double feedW) {

        /** Both together, W. */
        public double totalW() {
            return lossW + feedW;
        }
    }

    /** The chosen warm-up that took longest; one that did not end counts as longest. */
    public Optional<HoldResult.WarmUp> slowestWarmUp() {
        return warmUps.stream()
                .max((a, b) -> Double.compare(
                        a.hours().orElse(Double.POSITIVE_INFINITY), b.hours().orElse(Double.POSITIVE_INFINITY)));
    }
}
