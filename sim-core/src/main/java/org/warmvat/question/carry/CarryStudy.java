package org.warmvat.question.carry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.design.heating.BackupCircuit;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.CyclicWeather;
import org.warmvat.question.Parallel;
import org.warmvat.question.ShortHours;
import org.warmvat.question.Threshold;
import org.warmvat.question.Variations;
import org.warmvat.question.Window;
import org.warmvat.tank.Course;
import org.warmvat.tank.Runner;
import org.warmvat.tank.SteadyHeat;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Can the solar coil carry the load alone between two dates (model section 10, carry)? */
public final class CarryStudy {

    /** Share of days that must be wholly warm for "on most days". */
    public static final double MOST_DAYS = 0.8;

    /** Days that must be left for a date to count as one from which the sun carries: a big tank coasts for days. */
    public static final int LEAST_DAYS_LEFT = 14;

    /** How far the coil's conductance is relaxed. */
    public static final double COIL_FACTOR = 10;

    /** How far the pump's high limit is relaxed, K. */
    public static final double HIGH_LIMIT_K = 20;

    /** How far the insulation is relaxed. */
    public static final double FOAM_FACTOR = 2;

    private static final int HOURS_PER_DAY = 24;
    private static final int RUNGS = 12;
    private static final double ELEMENT_W_PER_W = 5;

    private final Design design;
    private final Design alone;
    private final Window window;
    private final Runner runner;
    private final Question question;
    private final Parallel parallel;

    /**
     * What is asked.
     *
     * @param shortHours hours below the floor that are allowed
     * @param mostAreaM2 largest collector area to try; absent: ten times the design's, at least 1 m2
     */
    public record Question(double shortHours, OptionalDouble mostAreaM2) {}

    private CarryStudy(Design design, Window window, Engine engine, Question question, Parallel parallel) {
        this.design = design;
        this.window = window;
        this.question = question;
        this.parallel = parallel;
        alone = design.without(BackupCircuit.class);
        runner = new Runner(window.weather(), engine);
    }

    /**
     * Answers the question.
     *
     * @param asked a design with a solar circuit
     * @param file the hourly weather
     * @param window the window of the file
     * @param engine what integrates
     * @param question allowance and bound
     * @param parallel the threads
     * @throws StudyRefused when the design has no solar circuit or does not go with the weather
     */
    public static CarryResult run(
            Design asked, Weather file, Window window, Engine engine, Question question, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(asked, file);
        if (asked.solar().isEmpty()) {
            throw new StudyRefused(
                    "solar: the design has no solar circuit, expected a block solar: carry asks whether the sun keeps the tank warm");
        }
        Design design = CyclicWeather.design(asked, file);
        return new CarryStudy(design, window, engine, question, parallel).result();
    }

    private CarryResult result() {
        Course course = course(alone);
        CarryResult.Warmth warmth = warmth(course);
        double bound = question.mostAreaM2().orElse(Math.max(1, 10 * areaM2()));
        return new CarryResult(
                window.start().toLocalDate(),
                window.end().toLocalDate().minusDays(1),
                new CarryResult.Alone(warmth, firstDayBelow(course), leastDay(course), course),
                carriesFrom(),
                withBackup(course),
                area(bound),
                limits(warmth, course, bound));
    }

    private double areaM2() {
        return design.solar().orElseThrow().collector().areaM2();
    }

    private Course course(Design some) {
        return Course.of(runner.start(some, window.hours().first()), window.hours());
    }

    private CarryResult.Warmth warmth(Course course) {
        double shortHours = HalfMonths.sum(course.shortHours(), 0, course.hours());
        double leastC = Arrays.stream(course.leastC()).min().orElseThrow();
        int warmDays = (int) IntStream.range(0, window.days())
                .filter(day -> isWarm(course, day))
                .count();
        return new CarryResult.Warmth(verdict(shortHours, warmDays), shortHours, warmDays, leastC);
    }

    private CarryResult.Verdict verdict(double shortHours, int warmDays) {
        if (shortHours <= question.shortHours()) {
            return CarryResult.Verdict.YES;
        }
        return warmDays >= MOST_DAYS * window.days() ? CarryResult.Verdict.MOST_DAYS : CarryResult.Verdict.NO;
    }

    private static boolean isWarm(Course course, int day) {
        return HalfMonths.sum(course.shortHours(), day * HOURS_PER_DAY, (day + 1) * HOURS_PER_DAY) == 0;
    }

    private Optional<LocalDate> firstDayBelow(Course course) {
        return IntStream.range(0, window.days())
                .filter(day -> !isWarm(course, day))
                .mapToObj(window::date)
                .findFirst();
    }

    private LocalDate leastDay(Course course) {
        int least = 0;
        for (int hour = 0; hour < course.hours(); hour++) {
            least = course.leastC()[hour] < course.leastC()[least] ? hour : least;
        }
        return window.date(least / HOURS_PER_DAY);
    }

    /** Starts on each day in turn; the first day from which all later ones hold. */
    private Optional<LocalDate> carriesFrom() {
        int starts = window.days() - LEAST_DAYS_LEFT + 1;
        if (starts <= 0) {
            return Optional.empty();
        }
        List<Boolean> holds = parallel.map(
                IntStream.range(0, starts).boxed().toList(),
                day -> shortHours(alone, window.hours().first() + day * HOURS_PER_DAY) <= question.shortHours());
        OptionalInt first = Threshold.firstFromWhichAllHold(holds);
        return first.isPresent() ? Optional.of(window.date(first.getAsInt())) : Optional.empty();
    }

    /** Hours short from an hour to the window's end, or somewhat more than allowed. */
    private double shortHours(Design some, int fromHour) {
        return ShortHours.of(
                runner.start(some, fromHour), new Hours(fromHour, window.hours().end()), question.shortHours());
    }

    private CarryResult.WithBackup withBackup(Course without) {
        boolean stoodIn = design.backup().isEmpty();
        Design heated = stoodIn ? Variations.withElement(design, elementW()) : design;
        Course course = course(heated);
        List<CarryResult.Half> halves = HalfMonths.of(window, course, without);
        double shortfall =
                halves.stream().mapToDouble(CarryResult.Half::shortfallKWh).sum();
        return new CarryResult.WithBackup(stoodIn, shortfall, course.boughtKWh(), halves, course);
    }

    /** An element large enough never to be short of power. */
    private double elementW() {
        Weather weather = runner.weather(design);
        double handbook = SteadyHeat.needW(design, weather, ColdSpell.coldestDayC(weather));
        return Math.max(100, ELEMENT_W_PER_W * handbook);
    }

    private CarryResult.Area area(double boundM2) {
        List<Double> ladder = IntStream.rangeClosed(1 - RUNGS, 0)
                .mapToObj(rung -> boundM2 * Math.pow(2, rung / 2.0))
                .toList();
        List<CarryResult.Tried> tried = parallel.map(
                ladder,
                area -> new CarryResult.Tried(
                        area, warmth(course(withArea(area))).shortHours()));
        List<Boolean> holds = tried.stream()
                .map(one -> one.shortHours() <= question.shortHours())
                .toList();
        OptionalDouble smallest = Threshold.onLadder(
                ladder,
                holds,
                area -> shortHours(withArea(area), window.hours().first()) <= question.shortHours(),
                parallel);
        Optional<CarryResult.Price> price = smallest.isPresent()
                ? Optional.of(CarryResult.Price.of(design, course(withArea(smallest.getAsDouble()))))
                : Optional.empty();
        return new CarryResult.Area(
                areaM2(),
                boundM2,
                smallest,
                price,
                Threshold.neverWorse(
                        tried.stream().map(CarryResult.Tried::shortHours).toList()),
                tried);
    }

    private Design withArea(double areaM2) {
        return Variations.withCollectorArea(alone, areaM2);
    }

    private List<CarryResult.Relaxed> limits(CarryResult.Warmth asIs, Course course, double boundM2) {
        List<CarryResult.Limit> limits = List.of(
                CarryResult.Limit.COLLECTOR,
                CarryResult.Limit.COIL,
                CarryResult.Limit.HIGH_LIMIT,
                CarryResult.Limit.FOAM);
        List<CarryResult.Relaxed> all = new ArrayList<>();
        all.add(new CarryResult.Relaxed(CarryResult.Limit.NONE, asIs, CarryResult.Price.of(design, course)));
        all.addAll(parallel.map(limits, limit -> {
            Course changed = course(relaxed(limit, boundM2));
            return new CarryResult.Relaxed(limit, warmth(changed), CarryResult.Price.of(design, changed));
        }));
        return List.copyOf(all);
    }

    private Design relaxed(CarryResult.Limit limit, double boundM2) {
        return switch (limit) {
            case NONE -> alone;
            case COLLECTOR -> withArea(boundM2);
            case COIL -> Variations.withSolarCoilScaled(alone, COIL_FACTOR);
            case HIGH_LIMIT -> Variations.withHighLimitRaised(alone, HIGH_LIMIT_K);
            case FOAM -> Variations.withFoamScaled(alone, FOAM_FACTOR);
        };
    }
}
