package org.warmvat.question.carry;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.gas.GasPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.tank.Course;
import org.warmvat.tank.KeyFigures;

/**
 * Whether the sun carries the load alone in a window of the calendar.
 *
 * @param firstDay first day of the window
 * @param lastDay last day of the window
 * @param alone the window without backup
 * @param carriesFrom the date from which it carries to the end, a new start at the set-point on each day
 * @param withBackup the window with the backup on
 * @param area the collector area that carries it
 * @param limits what relaxing one thing alone does; the first is the design as it is
 */
public record CarryResult(
        LocalDate firstDay,
        LocalDate lastDay,
        Alone alone,
        Optional<LocalDate> carriesFrom,
        WithBackup withBackup,
        Area area,
        List<Relaxed> limits) {

    private static final double LEAST_GAS_LEFT = 0.9;

    /** The answer in a word. */
    public enum Verdict {
        /** No more hours short than allowed. */
        YES,
        /** At least 80 % of the days wholly at or above the floor. */
        MOST_DAYS,
        /** Fewer. */
        NO
    }

    /**
     * How warm a run kept.
     *
     * @param verdict the answer
     * @param shortHours hours below the floor
     * @param warmDays days wholly at or above the floor
     * @param leastC lowest slurry temperature
     */
    public record Warmth(Verdict verdict, double shortHours, int warmDays, double leastC) {}

    /**
     * The window without backup.
     *
     * @param warmth how warm it kept
     * @param firstDayBelow first day with a moment below the floor
     * @param leastDay day of the lowest temperature
     * @param course hour by hour
     */
    public record Alone(Warmth warmth, Optional<LocalDate> firstDayBelow, LocalDate leastDay, Course course) {}

    /**
     * The window with the backup on.
     *
     * @param stoodIn whether an element in the slurry stood in for a backup that the design does not have
     * @param shortfallKWh heat it gave
     * @param boughtKWh what it bought for that
     * @param halves the heat by half-month
     * @param course hour by hour
     */
    public record WithBackup(
            boolean stoodIn, double shortfallKWh, double boughtKWh, List<Half> halves, Course course) {}

    /**
     * Half a month: to the 15th, or from the 16th.
     *
     * @param firstDay its first day within the window
     * @param lastDay its last day within the window
     * @param solarKWh heat from the solar coil with the backup on
     * @param shortfallKWh heat from the backup
     * @param needKWh heat needed
     * @param shortHoursAlone hours below the floor without backup
     */
    public record Half(
            LocalDate firstDay,
            LocalDate lastDay,
            double solarKWh,
            double shortfallKWh,
            double needKWh,
            double shortHoursAlone) {}

    /**
     * The collector area.
     *
     * @param presentM2 area of the design
     * @param boundM2 largest area tried
     * @param smallestM2 smallest area that carries the window, absent when not even the largest does
     * @param price what the smallest brings beside warmth
     * @param monotone whether more area never did worse on the ladder of areas tried
     * @param tried the ladder
     */
    public record Area(
            double presentM2,
            double boundM2,
            OptionalDouble smallestM2,
            Optional<Price> price,
            boolean monotone,
            List<Tried> tried) {}

    /**
     * One collector area.
     *
     * @param areaM2 the area
     * @param shortHours hours below the floor
     */
    public record Tried(double areaM2, double shortHours) {}

    /**
     * The design with one thing relaxed.
     *
     * @param what which, {@link Limit#NONE} for the design as it is
     * @param warmth how warm it keeps
     * @param price what else it brings
     */
    public record Relaxed(Limit what, Warmth warmth, Price price) {}

    /**
     * What a change brings beside warmth; no remedy is told without it.
     *
     * @param mostC highest slurry temperature
     * @param methaneNm3 methane made, where gas is computed
     * @param tooHotHours hours above the maximum of digestion
     * @param stagnationHours hours of stagnation of the collector
     */
    public record Price(double mostC, OptionalDouble methaneNm3, double tooHotHours, double stagnationHours) {

        static Price of(Design design, Course course) {
            Period whole = course.whole();
            boolean hasGas = design.gas().isPresent();
            return new Price(
                    whole.of(KeyFigures.MOST_C),
                    hasGas ? OptionalDouble.of(whole.of(GasPart.METHANE_MADE)) : OptionalDouble.empty(),
                    hasGas ? whole.watchHours(KeyFigures.TOO_HOT) : hoursAboveUsualMaximum(course.slurryC()),
                    whole.of(SolarPart.STAGNATION_HOURS));
        }

        /** Where no gas is computed the maximum of digestion is that of a design that says nothing of it. */
        private static double hoursAboveUsualMaximum(double[] slurryC) {
            double mostC = Design.usual().gas().orElseThrow().temperatures().mostC();
            return Arrays.stream(slurryC).filter(celsius -> celsius > mostC).count();
        }

        /** A tenth less gas than the design as it is makes, or any hour above the maximum of digestion. */
        public boolean killsDigestion(Price asIs) {
            boolean less = methaneNm3.isPresent()
                    && methaneNm3.getAsDouble()
                            < LEAST_GAS_LEFT * asIs.methaneNm3().orElse(0);
            return tooHotHours > 0 || less;
        }
    }

    /** What may bind. */
    public enum Limit {
        /** Nothing relaxed. */
        NONE,
        /** The collector's area, relaxed to the bound. */
        COLLECTOR,
        /** The solar coil, its conductance tenfold. */
        COIL,
        /** The pump's high limit, 20 K higher. */
        HIGH_LIMIT,
        /** The insulation, twice as thick. */
        FOAM
    }
}
