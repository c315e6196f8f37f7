package org.warmvat.question.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.gas.Gas;
import org.warmvat.design.gas.GasHolder;
import org.warmvat.design.keys.Bounds;
import org.warmvat.engine.Engine;
import org.warmvat.gas.GasHolderPart;
import org.warmvat.gas.GasPart;
import org.warmvat.gas.GasUsePart;
import org.warmvat.network.Warning;
import org.warmvat.question.Parallel;
import org.warmvat.question.Threshold;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** The smallest gas holder that serves the uses, and what a larger one brings (equation 14.4). */
public final class HolderStudy {

    /** A holder of more than so many days' gas is not sought. */
    public static final int MOST_DAYS_OF_GAS = 20;

    private static final double HOURS_PER_DAY = 24;
    private static final double ACCURACY = 0.01;
    /** Below this share of the largest nothing smaller is asked for: minutes of gas. */
    private static final double LEAST_SHARE = 1e-4;

    private static final Bounds ALLOWED = Design.bounds("gas.holder.useful_m3");

    private static final int CURVE = 12;
    private static final double CURVE_FROM = 0.1;
    private static final double CURVE_TO = 3;

    private final Design design;
    private final Runner runner;
    private final double share;

    /**
     * A run through the file with one holder.
     *
     * @param usefulM3 its useful volume
     * @param metKWh what the uses got
     * @param unmetKWh what they wanted and did not get
     * @param surplusNm3 gas that found no room
     * @param madeNm3PerDay dry biogas made a day, on the mean
     * @param warnings what the user must know of the run
     */
    public record Year(
            double usefulM3,
            double metKWh,
            double unmetKWh,
            double surplusNm3,
            double madeNm3PerDay,
            List<Warning> warnings) {

        /** Share of what is wanted that stays unmet; 0 where nothing is wanted. */
        public double unmetShare() {
            double wanted = metKWh + unmetKWh;
            return wanted == 0 ? 0 : unmetKWh / wanted;
        }
    }

    /**
     * Which gas holder serves the uses.
     *
     * @param allowedShare share of what is wanted that may stay unmet
     * @param smallestM3 the smallest that does, to one per cent; empty where 20 days' gas would not do
     * @param smallest the run with it, or with the largest tried
     * @param asDesigned the run with the design's own
     * @param daysGasM3 a day's gas, m3 in the holder
     * @param curve runs with holders around the smallest
     */
    public record Result(
            double allowedShare,
            OptionalDouble smallestM3,
            Year smallest,
            Year asDesigned,
            double daysGasM3,
            List<Year> curve) {

        /** Takes the list as it is. */
        public Result {
            curve = List.copyOf(curve);
        }
    }

    private HolderStudy(Design design, Weather file, Engine engine, double share) {
        this.design = design;
        this.share = share;
        runner = new Runner(file, engine);
    }

    /**
     * Answers the question.
     *
     * @param design a design with a holder and uses
     * @param file the hourly weather
     * @param engine what integrates
     * @param share of what the uses want that may stay unmet, 0..1
     * @param parallel the threads
     * @throws StudyRefused when the design has no uses or does not go with the weather
     */
    public static Result run(Design design, Weather file, Engine engine, double share, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(design, file);
        if (design.gas().filter(Gas::isUsed).isEmpty()) {
            throw new StudyRefused(
                    "gas.uses: the design has none, expected at least one to ask which holder serves it");
        }
        return new HolderStudy(design, file, engine, share).result(parallel);
    }

    private Result result(Parallel parallel) {
        GasHolder own = holder();
        Year asDesigned = year(own.usefulM3());
        double daysGasM3 = asDesigned.madeNm3PerDay() / own.normalPerM3();
        double mostM3 = daysGasM3 > 0 ? ALLOWED.nearest(MOST_DAYS_OF_GAS * daysGasM3) : 0;
        OptionalDouble smallest = mostM3 > 0 ? smallest(mostM3) : OptionalDouble.empty();
        double around = smallest.orElse(own.usefulM3());
        List<Double> volumes = new ArrayList<>();
        for (int i = 0; i < CURVE; i++) {
            volumes.add(ALLOWED.nearest(around * (CURVE_FROM + i * (CURVE_TO - CURVE_FROM) / (CURVE - 1))));
        }
        Year at = smallest.isPresent() ? year(smallest.getAsDouble()) : year(Math.max(mostM3, own.usefulM3()));
        return new Result(share, smallest, at, asDesigned, daysGasM3, parallel.map(volumes, this::year));
    }

    /**
     * To one per cent, upwards. Sought from above: a holder that is far too small fills and empties within minutes, which takes long to
     * follow and tells nothing.
     */
    private OptionalDouble smallest(double mostM3) {
        if (!serves(mostM3)) {
            return OptionalDouble.empty();
        }
        double leastM3 = Math.max(ALLOWED.least(), LEAST_SHARE * mostM3);
        double good = mostM3;
        double bad = Math.max(mostM3 / 2, leastM3);
        while (bad > leastM3 && serves(bad)) {
            good = bad;
            bad = Math.max(good / 2, leastM3);
        }
        return OptionalDouble.of(Threshold.closedIn(bad, good, 1 + ACCURACY, this::serves));
    }

    private boolean serves(double usefulM3) {
        return year(usefulM3).unmetShare() <= share;
    }

    private GasHolder holder() {
        return design.gas().flatMap(Gas::holder).orElseThrow();
    }

    private Year year(double usefulM3) {
        Design sized = design.with("gas.holder.useful_m3", usefulM3);
        Account account = runner.year(sized, Account.Keep.SUMS);
        Period whole = account.whole();
        double metKWh = 0;
        double unmetKWh = 0;
        for (var use : design.gas().orElseThrow().uses()) {
            metKWh += whole.of(GasUsePart.met(use));
            unmetKWh += whole.of(GasUsePart.unmet(use));
        }
        return new Year(
                usefulM3,
                metKWh,
                unmetKWh,
                whole.of(GasHolderPart.SURPLUS),
                whole.of(GasPart.BIOGAS) / (runner.file().hours() / HOURS_PER_DAY),
                account.warnings());
    }
}
