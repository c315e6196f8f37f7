package org.warmvat.question.advise;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.Parallel;
import org.warmvat.question.Window;
import org.warmvat.question.advise.Recommendation.Change;
import org.warmvat.question.backup.BackupResult;
import org.warmvat.question.backup.BackupStudy;
import org.warmvat.question.carry.CarryResult;
import org.warmvat.question.carry.CarryStudy;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.question.hold.HoldStudy;
import org.warmvat.question.payback.PaybackStudy;
import org.warmvat.question.plausible.Plausibility;
import org.warmvat.question.plausible.Remark;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/**
 * Runs year, payback, backup, hold and carry on one design and says what to change: first what can hurt, then what leaves the tank
 * cold, then net energy. Of several years all are run; payback is the mean of the whole ones, hold and carry are told of the worst.
 */
public final class AdviseStudy {

    /** More than this nobody does. */
    public static final int MOST = 7;

    /** By how much the coldest week may be colder than the file's, K. */
    public static final double RESERVE_K = 10;

    /** Remarks that the recommendations themselves answer. */
    private static final List<String> ANSWERED = List.of("heater", "setpoint_window");

    private static final double FILL_C = 10;
    private static final int WARM_UP_DAYS = 7;
    private static final double FALL_K = 10;
    private static final MonthDay SPRING_FROM = MonthDay.of(3, 1);
    private static final MonthDay SPRING_TO = MonthDay.of(5, 31);
    private static final MonthDay SOUTHERN_SPRING_FROM = MonthDay.of(9, 1);
    private static final MonthDay SOUTHERN_SPRING_TO = MonthDay.of(11, 30);

    private final Design design;
    private final List<Weather> files;
    private final Engine engine;
    private final Parallel parallel;

    private AdviseStudy(Design design, List<Weather> files, Engine engine, Parallel parallel) {
        this.design = design;
        this.files = files;
        this.engine = engine;
        this.parallel = parallel;
    }

    /**
     * Answers the question.
     *
     * @param design the design
     * @param files the weather, one file or several
     * @param engine what integrates
     * @param parallel the threads
     * @throws StudyRefused when design and weather do not go together
     */
    public static AdviseResult run(Design design, List<Weather> files, Engine engine, Parallel parallel) {
        files.forEach(file -> StudyRefused.check(design, file));
        return new AdviseStudy(design, files, engine, parallel).result();
    }

    private AdviseResult result() {
        List<Runner> runners =
                files.stream().map(file -> new Runner(file, engine)).toList();
        Trials trials = new Trials(design, runners, parallel);
        List<Recommendation> slips = slips(trials.asIs());
        return slips.isEmpty()
                ? advised(trials, runners)
                : new AdviseResult(
                        trials.asIs(),
                        trials.byYear(),
                        slips,
                        Optional.empty(),
                        new AdviseResult.Answers(
                                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** What is not credible has to be mended before anything else is worth a word. */
    private List<Recommendation> slips(Outcome asIs) {
        return Plausibility.of(design, Optional.of(files.get(0))).stream()
                .filter(remark -> remark.gravity() == Remark.Gravity.NOT_CREDIBLE && !ANSWERED.contains(remark.key()))
                .limit(MOST)
                .map(remark -> new Recommendation(
                        Kind.SLIP, remark.sentence(), Double.NaN, Optional.empty(), asIs, OptionalDouble.empty()))
                .toList();
    }

    private AdviseResult advised(Trials trials, List<Runner> runners) {
        BackupResult plain = backup(0);
        BackupResult reserve = backup(RESERVE_K);
        HoldResult hold = hold();
        List<Runner> whole = runners.stream()
                .filter(runner -> runner.file().hours() >= PaybackStudy.YEAR_H)
                .toList();
        Optional<PaybackStudy.Result> payback =
                whole.isEmpty() ? Optional.empty() : Optional.of(PaybackStudy.run(design, whole, parallel));
        List<Recommendation> found = new ArrayList<>(new Dangers(trials).found());
        Heaters heaters = new Heaters(trials);
        heaters.heater(plain, reserve).ifPresent(found::add);
        heaters.failure(hold).ifPresent(found::add);
        found.addAll(new Gains(trials).found(payback));
        List<Recommendation> most = first(found);
        List<Change> changes = most.stream()
                .flatMap(recommendation -> recommendation.change().stream())
                .toList();
        return new AdviseResult(
                trials.asIs(),
                trials.byYear(),
                most,
                changes.size() < 2 ? Optional.empty() : trials.together(changes),
                new AdviseResult.Answers(Optional.of(plain), Optional.of(reserve), Optional.of(hold), carry()));
    }

    /** The first of them, each number changed by one only. */
    private static List<Recommendation> first(List<Recommendation> found) {
        Set<String> changed = new HashSet<>();
        return found.stream()
                .filter(one ->
                        one.change().map(change -> changed.add(change.key())).orElse(true))
                .limit(MOST)
                .toList();
    }

    private BackupResult backup(double colderK) {
        boolean longEnough = files.stream().allMatch(file -> file.hours() >= WARM_UP_DAYS * 24);
        BackupStudy.WarmUp warmUp = new BackupStudy.WarmUp(FILL_C, longEnough ? WARM_UP_DAYS : 1);
        return BackupStudy.run(
                design, files, engine, new BackupStudy.Question(0, warmUp, false, colderK, Heaters.SIZES_W), parallel);
    }

    /** A failure in the month of the coldest week, of the year in which the tank is cold the soonest. */
    private HoldResult hold() {
        return files.stream()
                .map(this::hold)
                .min(Comparator.comparingDouble(Heaters::soonestH))
                .orElseThrow();
    }

    private HoldResult hold(Weather file) {
        int coldest = ColdSpell.coldestWeekFrom(file, file.hours());
        HoldStudy.When month = new HoldStudy.In(file.start().plusHours(coldest).getMonth());
        double fallenC = design.control().setpointC() - FALL_K;
        return HoldStudy.run(design, file, engine, new HoldStudy.Question(month, List.of(fallenC), FILL_C), parallel);
    }

    /** Of the year with the most hours short. */
    private Optional<CarryResult> carry() {
        return files.stream()
                .map(this::carry)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(carry -> carry.alone().warmth().shortHours()));
    }

    private Optional<CarryResult> carry(Weather file) {
        boolean south = file.site().latitudeDeg() < 0;
        if (design.solar().isEmpty() || !file.isWholeYear()) {
            return Optional.empty();
        }
        Window spring = south
                ? Window.of(file, SOUTHERN_SPRING_FROM, SOUTHERN_SPRING_TO)
                : Window.of(file, SPRING_FROM, SPRING_TO);
        return Optional.of(CarryStudy.run(
                design, file, spring, engine, new CarryStudy.Question(0, OptionalDouble.empty()), parallel));
    }
}
