package org.warmvat.question.payback;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.warmvat.account.Period;
import org.warmvat.design.Design;
import org.warmvat.design.envelope.Envelope;
import org.warmvat.design.envelope.Layer;
import org.warmvat.question.Parallel;
import org.warmvat.question.Variations;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Money;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;

/**
 * From which thickness on does the next 10 mm of foam no longer pay, and from which area on the next half square metre of
 * collector? Each step is a design-year of its own, at the prices of the design: upwards from the design while steps pay,
 * downwards while not even the step that leads to the design does.
 */
public final class PaybackStudy {

    /** One step of foam, m. */
    public static final double FOAM_STEP_M = 0.01;
    /** One step of collector, m2. */
    public static final double COLLECTOR_STEP_M2 = 0.5;
    /** A year that a saving refers to, h; shorter weather tells no payback. */
    public static final double YEAR_H = 8760;

    private static final double LEAST_FOAM_M = 0.01;
    private static final double MOST_FOAM_M = 2;
    private static final double MOST_COLLECTOR_M2 = 1000;
    private static final int MOST_STEPS = 40;
    private static final double M_PER_MM = 1e-3;
    /** Design-years of one go; a fixed number, so that the steps told do not depend on threads. */
    private static final int GO = 4;
    /** Allows for the rounding of a thickness that was given in millimetres. */
    private static final double ROUNDING = 1e-6;

    private final Design design;
    private final List<Runner> runners;
    private final Parallel parallel;
    private final Point asIs;

    /** Outlay and money balance of a year. */
    private record Point(double outlay, double balance) {}

    /** Designs around the one asked about: how far down and up, and each with its amount. */
    private record Ladder(int down, int up, IntFunction<Design> design, IntToDoubleFunction amount) {}

    /**
     * What more of each pays.
     *
     * @param foam steps of the thickness of {@link #foamOf}, mm, the insulation of all parts growing alike; empty without any
     * @param collector steps of area, m2; empty without a solar circuit
     */
    public record Result(Optional<Payback> foam, Optional<Payback> collector) {}

    private PaybackStudy(Design design, List<Runner> runners, Parallel parallel) {
        this.design = design;
        this.runners = runners;
        this.parallel = parallel;
        asIs = points(List.of(design)).get(0);
    }

    /**
     * Runs the design-years it takes.
     *
     * @param design the design
     * @param runners weather and engine of each year, whose savings are scaled to a year; each should last {@link #YEAR_H} or more. A
     *     saving is the mean of all years.
     * @param parallel the threads
     * @throws StudyRefused when design and weather do not go together
     */
    public static Result run(Design design, List<Runner> runners, Parallel parallel) throws StudyRefused {
        runners.forEach(runner -> StudyRefused.check(design, runner.file()));
        PaybackStudy study = new PaybackStudy(design, runners, parallel);
        return new Result(study.foam(), study.collector());
    }

    /** The part whose thickness stands for the foam: the wall, else the lid, else the floor; empty where nothing insulates. */
    public static Optional<String> foamOf(Design design) {
        return Envelope.PARTS.stream()
                .filter(part -> design.envelope()
                        .rules()
                        .mainInsulation(design.envelope().part(part))
                        .isPresent())
                .findFirst();
    }

    private Optional<Payback> foam() {
        Optional<String> part = foamOf(design);
        if (part.isEmpty()) {
            return Optional.empty();
        }
        double ownM = thicknessM(part.get()).orElseThrow();
        double leastM = thicknesses().min().orElseThrow();
        double mostM = thicknesses().max().orElseThrow();
        Ladder ladder = new Ladder(
                rungs(leastM - LEAST_FOAM_M, FOAM_STEP_M),
                rungs(MOST_FOAM_M - mostM, FOAM_STEP_M),
                rung -> Variations.withFoamThicker(design, rung * FOAM_STEP_M),
                rung -> tidy((ownM + rung * FOAM_STEP_M) / M_PER_MM));
        return climbed(ladder);
    }

    private DoubleStream thicknesses() {
        return Envelope.PARTS.stream()
                .map(this::thicknessM)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble);
    }

    private OptionalDouble thicknessM(String part) {
        Optional<Layer> main =
                design.envelope().rules().mainInsulation(design.envelope().part(part));
        return main.isPresent() ? OptionalDouble.of(main.get().thicknessM()) : OptionalDouble.empty();
    }

    private Optional<Payback> collector() {
        return design.solar().flatMap(solar -> {
            double ownM2 = solar.collector().areaM2();
            return climbed(new Ladder(
                    rungs(ownM2, COLLECTOR_STEP_M2),
                    rungs(MOST_COLLECTOR_M2 - ownM2, COLLECTOR_STEP_M2),
                    rung -> Variations.withCollectorArea(design, ownM2 + rung * COLLECTOR_STEP_M2),
                    rung -> tidy(ownM2 + rung * COLLECTOR_STEP_M2)));
        });
    }

    private static int rungs(double span, double step) {
        return (int) Math.max(0, Math.min(MOST_STEPS, Math.floor(span / step + ROUNDING)));
    }

    private static double tidy(double amount) {
        return Math.round(amount / ROUNDING) / (1 / ROUNDING);
    }

    /** The steps; empty where the design leaves room for none. */
    private Optional<Payback> climbed(Ladder ladder) {
        NavigableMap<Integer, Point> points = new TreeMap<>(Map.of(0, asIs));
        while (points.lastKey() < ladder.up() && steps(points, ladder).stream().allMatch(this::pays)) {
            add(points, ladder, points.lastKey() + 1, Math.min(ladder.up(), points.lastKey() + GO));
        }
        boolean pays = points.size() > 1 && pays(steps(points, ladder).get(0));
        while (!pays
                && points.firstKey() > -ladder.down()
                && lastPaying(points, ladder).isEmpty()) {
            add(points, ladder, Math.max(-ladder.down(), points.firstKey() - GO), points.firstKey() - 1);
        }
        return Optional.of(steps(points, ladder))
                .filter(steps -> !steps.isEmpty())
                .map(steps ->
                        new Payback(steps.subList(lastPaying(points, ladder).orElse(0), steps.size())));
    }

    /** The last step up to the design itself that pays: what lies below it is of no interest. */
    private OptionalInt lastPaying(NavigableMap<Integer, Point> points, Ladder ladder) {
        List<Payback.Step> steps = steps(points, ladder);
        return IntStream.range(0, -points.firstKey())
                .filter(i -> pays(steps.get(i)))
                .reduce((a, b) -> b);
    }

    private void add(NavigableMap<Integer, Point> points, Ladder ladder, int from, int to) {
        List<Integer> rungs = IntStream.rangeClosed(from, to).boxed().toList();
        List<Design> designs =
                rungs.stream().map(rung -> ladder.design().apply(rung)).toList();
        List<Point> found = points(designs);
        for (int i = 0; i < rungs.size(); i++) {
            points.put(rungs.get(i), found.get(i));
        }
    }

    private List<Point> points(List<Design> designs) {
        List<List<Period>> found = parallel.cross(
                designs,
                runners,
                (some, runner) -> BriefYear.checked(some, runner).year());
        return IntStream.range(0, designs.size())
                .mapToObj(i -> point(designs.get(i), found.get(i)))
                .toList();
    }

    private static Point point(Design design, List<Period> years) {
        double balance = years.stream()
                .mapToDouble(year -> Money.of(design, year).balance() * YEAR_H / year.hours())
                .sum();
        return new Point(Purchase.of(design).outlay(design), balance / years.size());
    }

    private boolean pays(Payback.Step step) {
        return step.years() <= design.prices().outlay().paysWithinYears();
    }

    private static List<Payback.Step> steps(NavigableMap<Integer, Point> points, Ladder ladder) {
        List<Payback.Step> steps = new ArrayList<>();
        for (int rung = points.firstKey(); rung < points.lastKey(); rung++) {
            Point before = points.get(rung);
            Point after = points.get(rung + 1);
            steps.add(new Payback.Step(
                    ladder.amount().applyAsDouble(rung),
                    ladder.amount().applyAsDouble(rung + 1),
                    after.outlay() - before.outlay(),
                    after.balance() - before.balance()));
        }
        return steps;
    }
}
