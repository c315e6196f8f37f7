package org.warmvat.question.hold;

import java.time.LocalDateTime;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.design.season.SeasonTable;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.CyclicWeather;
import org.warmvat.question.Parallel;
import org.warmvat.tank.Course;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Heat fails: how long does the tank stay warm; and how long does it take to warm up (model section 10, hold)? */
public final class HoldStudy {

    /** Longest time a failure or a warm-up is followed, days. */
    public static final int MOST_DAYS = 60;

    /** For so many days from its beginning a calendar must ask for warmth where the start of a warm-up is free. */
    private static final int WARM_UP_DAYS = 7;

    private static final int HOURS_PER_DAY = 24;
    private static final int FIRST_LOOK_HOURS = 7 * HOURS_PER_DAY;
    private static final int MOST_HOURS = MOST_DAYS * HOURS_PER_DAY;

    private final Design design;
    private final SeasonTable season;
    private final Weather file;
    private final Runner runner;
    private final Question question;
    private final Parallel parallel;
    private final List<Double> temperaturesC;

    /**
     * What is asked.
     *
     * @param when the moments at which the heat may fail
     * @param temperaturesC temperatures to reach; empty for the usual ones
     * @param fillC temperature of a cold fill
     */
    public record Question(When when, List<Double> temperaturesC, double fillC) {}

    /** The moments at which the heat may fail. */
    public sealed interface When {}

    /** Any hour of the file. */
    public record Anytime() implements When {}

    /**
     * Any hour of a month.
     *
     * @param month the month
     */
    public record In(Month month) implements When {}

    /**
     * At the beginning of a day.
     *
     * @param day the day
     */
    public record At(MonthDay day) implements When {}

    private HoldStudy(Design design, Weather file, Engine engine, Question question, Parallel parallel) {
        this.design = design;
        season = design.season();
        this.file = file;
        this.question = question;
        this.parallel = parallel;
        runner = new Runner(CyclicWeather.weather(file, file.isWholeYear() ? MOST_HOURS : 0), engine);
        temperaturesC = (question.temperaturesC().isEmpty() ? usualTemperaturesC() : question.temperaturesC())
                .stream().distinct().sorted(Comparator.reverseOrder()).toList();
    }

    /** The minimum, and 5, 10 and 20 K below the set-point. */
    private List<Double> usualTemperaturesC() {
        double setpointC = design.control().setpointC();
        return List.of(design.control().minimumC(), setpointC - 5, setpointC - 10, setpointC - 20);
    }

    /**
     * Answers the question.
     *
     * @param design the design
     * @param file the hourly weather
     * @param engine what integrates
     * @param question moments, temperatures, fill
     * @param parallel the threads
     * @throws StudyRefused when the file does not hold the moments, or design and weather do not go together
     */
    public static HoldResult run(Design design, Weather file, Engine engine, Question question, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(design, file);
        HoldStudy study = new HoldStudy(CyclicWeather.design(design, file), file, engine, question, parallel);
        List<Integer> asked = study.starts();
        List<Integer> held = asked.stream().filter(study::isHeldWarm).toList();
        List<Integer> starts = held.isEmpty() ? asked : held;
        if (starts.isEmpty()) {
            throw new StudyRefused("weather: goes from " + file.start() + " to " + file.end()
                    + ", which does not hold the time asked for; expected a file that does");
        }
        return study.result(starts, asked.size() - starts.size());
    }

    private HoldResult result(List<Integer> starts, int leftOut) {
        HealthyTank healthy = HealthyTank.of(design, new Runner(file, runner.engine()), starts.get(starts.size() - 1));
        List<HoldResult.Failure> failures = new ArrayList<>();
        if (design.backup().isPresent()) {
            failures.add(failure(HoldResult.Cause.HEATER, starts, healthy));
        }
        failures.add(failure(HoldResult.Cause.POWER, starts, healthy));
        Weather weather = new Runner(file, runner.engine()).weather(design);
        DerivedFigures figures = DerivedFigures.of(design, weather.meanWindMPerS(), weather.meanAirC(), 0);
        return new HoldResult(temperaturesC, figures.timeConstantH(), failures, leftOut, warmUps(warmUpFrom(starts)));
    }

    /** The hours asked for at whose beginning the heat may fail. */
    private List<Integer> starts() {
        return IntStream.range(0, file.hours())
                .filter(hour -> isAsked(file.start().plusHours(hour)))
                .boxed()
                .toList();
    }

    /** Whether a minimum holds on the day of an hour and the tank is not warming up: only then can heat be missed. */
    private boolean isHeldWarm(int hour) {
        int day = SeasonTable.dayOf(file.start().plusHours(hour).toLocalDate());
        return design.spells().isEmpty() || (Double.isFinite(season.on(day).minimumC()) && !season.isGrace(day));
    }

    private boolean isAsked(LocalDateTime moment) {
        if (question.when() instanceof In in) {
            return moment.getMonth() == in.month();
        }
        if (question.when() instanceof At at) {
            return MonthDay.from(moment).equals(at.day()) && moment.getHour() == 0;
        }
        return true;
    }

    private HoldResult.Failure failure(HoldResult.Cause cause, List<Integer> starts, HealthyTank healthy) {
        HealthyTank.Failed broken = healthy.failed(cause, runner);
        int limit = FIRST_LOOK_HOURS;
        List<OptionalDouble> first = firstReached(broken, starts, limit);
        if (first.stream().allMatch(OptionalDouble::isEmpty)) {
            limit = MOST_HOURS;
            first = firstReached(broken, starts, limit);
        }
        int shown = starts.get(worst(first));
        List<HoldResult.Moment> worst = new ArrayList<>(List.of(moment(broken, shown, temperaturesC.get(0))));
        for (double goalC : temperaturesC.subList(1, temperaturesC.size())) {
            int soonest = new Soonest(
                            starts, (start, most) -> broken.reached(goalC, hours(starts.get(start), most)), MOST_HOURS)
                    .of(parallel);
            worst.add(moment(broken, starts.get(soonest), goalC));
        }
        List<OptionalDouble> fromFirst = temperaturesC.stream()
                .map(goalC -> broken.reached(goalC, hours(shown, MOST_HOURS)))
                .toList();
        return new HoldResult.Failure(
                cause,
                List.copyOf(worst),
                UsualTimes.of(file, runner.file().hours(), starts, first, limit),
                Course.of(broken.at(shown), hours(shown, shownHours(fromFirst))));
    }

    private HoldResult.Moment moment(HealthyTank.Failed broken, int hour, double goalC) {
        return new HoldResult.Moment(
                file.start().plusHours(hour),
                broken.at(hour).slurryC(),
                broken.reached(goalC, hours(hour, MOST_HOURS)));
    }

    /** As many hours as the last temperature takes, a day more, at least two days. */
    private static int shownHours(List<OptionalDouble> reached) {
        double last = reached.stream()
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max()
                .orElse(FIRST_LOOK_HOURS);
        return (int) Math.ceil(Math.max(HOURS_PER_DAY, last)) + HOURS_PER_DAY;
    }

    private Hours hours(int from, int length) {
        return new Hours(from, Math.min(from + length, runner.file().hours()));
    }

    private List<OptionalDouble> firstReached(HealthyTank.Failed broken, List<Integer> starts, int limit) {
        return parallel.map(starts, hour -> broken.reached(temperaturesC.get(0), hours(hour, limit)));
    }

    private static int worst(List<OptionalDouble> first) {
        return IntStream.range(0, first.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> first.get(i).orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
    }

    /** The first start of a month or day asked for, else the first hour of the file's coldest seven days. */
    private int warmUpFrom(List<Integer> starts) {
        return question.when() instanceof Anytime
                ? ColdSpell.coldestWeekFrom(file, file.hours(), design, WARM_UP_DAYS)
                : starts.get(0);
    }

    private List<HoldResult.WarmUp> warmUps(int from) {
        List<Boolean> suns = design.solar().isPresent() ? List.of(true, false) : List.of(false);
        return parallel.map(
                suns,
                sun -> WarmingUp.of(
                        runner,
                        sun ? design : design.without(SolarCircuit.class),
                        question.fillC(),
                        hours(from, MOST_HOURS),
                        sun));
    }
}
