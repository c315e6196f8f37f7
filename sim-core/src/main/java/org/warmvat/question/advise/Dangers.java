package org.warmvat.question.advise;

import java.time.MonthDay;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.gas.Gas;
import org.warmvat.envelope.FittingLoss;
import org.warmvat.envelope.FittingsPart;
import org.warmvat.heating.SolarPart;
import org.warmvat.network.Warning;
import org.warmvat.question.Variations;
import org.warmvat.question.advise.Recommendation.Change;
import org.warmvat.question.advise.Trials.Tried;
import org.warmvat.question.year.BriefYear;

/** Recommendations against what can hurt. */
final class Dangers {

    private static final double LEAST_STAGNATION_H = 24;

    /** A month counts as one in which the collector stands hot from such a share of all such hours. */
    private static final List<Double> SHARES_OF_MONTH = List.of(0.05, 0.1, 0.2);

    /** What a cover may cost, kWh a year or share of the net energy. */
    private static final double LEAST_KWH = 20;

    private static final double MAY_COST = 0.02;

    private static final double FROST_MARGIN_K = 5;
    private static final List<Double> PIPE_INSULATION_MM = List.of(50.0, 75.0, 100.0, 150.0, 200.0);

    private final Trials trials;
    private final Design design;
    private final Outcome asIs;

    Dangers(Trials trials) {
        this.trials = trials;
        this.design = trials.design();
        this.asIs = trials.asIs();
    }

    List<Recommendation> found() {
        Outcome.Hours hours = asIs.hours();
        return Stream.of(
                        where(hours.air() > 0, this::air),
                        where(hours.tooHot() > 0, this::tooHot),
                        where(hours.frozenLoop() > 0, this::frozenLoop),
                        where(hours.frozenPipe() > 0, this::frozenPipe),
                        where(hours.stagnation() >= LEAST_STAGNATION_H, this::stagnation))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Recommendation> where(boolean dangerous, Supplier<Recommendation> recommended) {
        return dangerous ? Optional.of(recommended.get()) : Optional.empty();
    }

    private Recommendation recommendation(Kind kind, String about, double amount, Optional<Tried> tried) {
        return new Recommendation(
                kind,
                about,
                amount,
                tried.map(Tried::change),
                tried.map(Tried::outcome).orElse(asIs),
                OptionalDouble.empty());
    }

    /** The first change after which all is as it should be. */
    private Optional<Tried> first(List<Change> changes, Predicate<Outcome> mended) {
        return trials.of(changes).stream()
                .filter(tried -> mended.test(tried.outcome()))
                .findFirst();
    }

    private double worst(String warning) {
        return asIs.warnings().stream()
                .filter(one -> one.key().equals(warning))
                .mapToDouble(Warning::worst)
                .findFirst()
                .orElse(Double.NaN);
    }

    /** As much less air as the worst hour had too much; none at all where gas stops. */
    private Recommendation air() {
        String key = "gas.air_dosing.litres_per_hour";
        double allowed = design.gas().flatMap(Gas::airDosing).orElseThrow().warningShare();
        double share = worst("air_share");
        double less = 0.95 * design.number(key) * allowed / share;
        double rounded = Math.floor(20 * less) / 20;
        List<Change> changes = DoubleStream.of(rounded, 0)
                .filter(flow -> Double.isFinite(flow) && flow < design.number(key))
                .distinct()
                .mapToObj(flow -> Change.of(design, key, flow))
                .toList();
        return recommendation(Kind.AIR, "", share, mending(changes, Outcome.Hours::air));
    }

    /** A lower limit of the solar pump, else a set-point in the window of digestion. */
    private Recommendation tooHot() {
        List<Change> changes = new ArrayList<>();
        String limit = "solar.limit_above_setpoint_k";
        if (design.numbers().containsKey(limit)) {
            DoubleStream.of(2, 1)
                    .filter(kelvin -> kelvin < design.number(limit))
                    .forEach(kelvin -> changes.add(Change.of(design, limit, kelvin)));
        }
        double best = Math.floor(design.gas().orElseThrow().temperatures().bestC() - 1);
        if (best < design.control().setpointC()) {
            changes.add(Change.of(design, "control.setpoint_c", best));
        }
        return recommendation(Kind.TOO_HOT, "", asIs.highestC(), mending(changes, Outcome.Hours::tooHot));
    }

    /** The first change after which none of these hours is left, and nothing else has grown worse. */
    private Optional<Tried> mending(List<Change> changes, ToDoubleFunction<Outcome.Hours> hours) {
        return first(changes, after -> hours.applyAsDouble(after.hours()) == 0 && after.isHarmless(asIs));
    }

    private Recommendation frozenLoop() {
        double coldest = worst(SolarPart.LOOP_FROZEN);
        double bears = 5 * Math.floor((coldest - FROST_MARGIN_K) / 5);
        return recommendation(
                Kind.FROZEN_LOOP,
                "",
                coldest,
                first(
                        List.of(Change.of(design, "solar.loop_freezes_c", bears)),
                        after -> after.hours().frozenLoop() == 0));
    }

    private int coldestPipe() {
        return IntStream.range(0, design.fittings().size())
                .filter(i -> design.fittings().get(i) instanceof Fitting.Pipe)
                .boxed()
                .min(Comparator.comparingDouble(this::tipShare))
                .orElseThrow();
    }

    /** The pipe whose end follows the slurry least; enough insulation on it, where some is enough. */
    private Recommendation frozenPipe() {
        int coldest = coldestPipe();
        String key = "fittings[" + coldest + "].pipe.insulation_mm";
        List<Change> changes = PIPE_INSULATION_MM.stream()
                .filter(mm -> mm > design.number(key))
                .map(mm -> Change.of(design, key, mm))
                .toList();
        String name = design.fittings().get(coldest).name();
        double worstC = worst(FittingsPart.COLD_PIPE_END);
        return recommendation(Kind.FROZEN_PIPE, name, worstC, mending(changes, Outcome.Hours::frozenPipe));
    }

    private double tipShare(int fitting) {
        return FittingLoss.of(design.fittings().get(fitting), FittingLoss.Still.of(design))
                .tipShare();
    }

    /**
     * The months in which most of it happens, the collector covered and its pump off, where the tank keeps as warm without it and
     * next to nothing is lost. A covered collector cannot stagnate: its hours of stagnation in the run are those of an open one and
     * say nothing.
     */
    private Recommendation stagnation() {
        List<Change> changes = SHARES_OF_MONTH.stream()
                .map(this::months)
                .flatMap(Optional::stream)
                .distinct()
                .map(months -> new Change(
                        months.words(),
                        OptionalDouble.empty(),
                        Double.NaN,
                        some -> Variations.withSolarOff(some, months.from(), months.to())))
                .toList();
        double mayCost = Math.max(LEAST_KWH, MAY_COST * Math.abs(asIs.gainKWh()));
        Optional<Tried> cover =
                first(changes, after -> after.isHarmless(asIs) && asIs.gainKWh() - after.gainKWh() <= mayCost);
        return recommendation(
                Kind.STAGNATION,
                cover.map(tried -> tried.change().key()).orElse(""),
                worst(SolarPart.STAGNATION),
                cover.map(tried -> new Tried(tried.change().named("calendar"), tried.outcome())));
    }

    private record Months(MonthDay from, MonthDay to) {
        String words() {
            return from.toString().substring(2) + " to " + to.toString().substring(2);
        }
    }

    /** The shortest stretch of whole months with all that have a share of the hours; none where that is all the year. */
    private Optional<Months> months(double share) {
        double[] hours = new double[12];
        for (BriefYear year : trials.years()) {
            for (Period month : year.months()) {
                hours[YearMonth.parse(month.label()).getMonthValue() - 1] += month.of(SolarPart.STAGNATION_HOURS);
            }
        }
        double least = share * DoubleStream.of(hours).sum();
        Optional<Months> shortest = Optional.empty();
        int length = 12;
        for (int first = 0; first < 12; first++) {
            int own = first;
            int last = IntStream.range(0, 12)
                    .filter(i -> hours[(own + i) % 12] >= least)
                    .max()
                    .orElse(0);
            if (hours[first] >= least && last + 1 < length) {
                length = last + 1;
                int end = (first + last) % 12 + 1;
                shortest = Optional.of(new Months(
                        MonthDay.of(first + 1, 1),
                        MonthDay.of(end, YearMonth.of(2025, end).lengthOfMonth())));
            }
        }
        return shortest;
    }
}
