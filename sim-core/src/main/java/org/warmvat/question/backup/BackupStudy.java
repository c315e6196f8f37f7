package org.warmvat.question.backup;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import org.warmvat.account.Account;
import org.warmvat.account.Period;
import org.warmvat.account.Warnings;
import org.warmvat.design.Design;
import org.warmvat.design.heating.SolarCircuit;
import org.warmvat.engine.Engine;
import org.warmvat.engine.Hours;
import org.warmvat.heating.BackupPart;
import org.warmvat.question.ColdSpell;
import org.warmvat.question.Parallel;
import org.warmvat.question.Threshold;
import org.warmvat.question.Variations;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.question.hold.HoldStudy;
import org.warmvat.question.hold.WarmingUp;
import org.warmvat.tank.Conductances;
import org.warmvat.tank.KeyFigures;
import org.warmvat.tank.SteadyHeat;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Which heater to buy (model section 10, backup)? */
public final class BackupStudy {

    /** Powers of the curve, as multiples of the handbook's. */
    private static final List<Double> LADDER = List.of(0.0, 0.25, 0.4, 0.55, 0.7, 0.85, 1.0, 1.2, 1.5, 2.0, 3.0, 5.0);

    /** A heater that is never short of power, W. */
    static final double UNLIMITED_W = 1e6;

    private static final int HOURS_PER_DAY = 24;

    private final Design design;
    private final boolean elementAssumed;
    private final Question question;
    private final Parallel parallel;
    private final List<BackupSite> sites;
    private final BackupResult.Handbook handbook;

    /**
     * What is asked.
     *
     * @param shortHours hours below the floor that are allowed in each file
     * @param warmUp the cold fill and how soon it must be warm
     * @param ignoreSun whether the solar circuit is left out of account
     * @param coldSpellK by how much the air of the coldest week is lowered, K
     * @param commonSizesW heaters that can be bought, W
     */
    public record Question(
            double shortHours, WarmUp warmUp, boolean ignoreSun, double coldSpellK, List<Double> commonSizesW) {

        /** The same with another coldest week. */
        public Question withColdSpell(double kelvin) {
            return new Question(shortHours, warmUp, ignoreSun, kelvin, commonSizesW);
        }
    }

    /**
     * The warm-up asked for.
     *
     * @param fillC temperature of the fill, °C
     * @param days how soon it must be at the set-point
     */
    public record WarmUp(double fillC, int days) {}

    private BackupStudy(Design asked, List<Weather> files, Engine engine, Question question, Parallel parallel) {
        this.question = question;
        this.parallel = parallel;
        Design heated = question.ignoreSun() ? asked.without(SolarCircuit.class) : asked;
        elementAssumed = asked.backup().isEmpty();
        design = elementAssumed ? Variations.withElement(heated, 0) : heated;
        sites = files.stream()
                .map(file -> BackupSite.of(design, file, engine, question))
                .toList();
        handbook = sites.stream()
                .map(this::handbook)
                .max(Comparator.comparingDouble(BackupResult.Handbook::totalW))
                .orElseThrow();
    }

    private BackupResult.Handbook handbook(BackupSite site) {
        Weather weather = site.year().weather(design);
        double coldC = ColdSpell.coldestDayC(weather);
        Conductances ua = Conductances.of(design, weather);
        return new BackupResult.Handbook(coldC, SteadyHeat.lossW(design, ua, coldC), SteadyHeat.feedW(design, coldC));
    }

    /**
     * Answers the question.
     *
     * @param asked the design; without a backup an element in the slurry is taken
     * @param files one or several weather files
     * @param engine what integrates
     * @param question allowances and choices
     * @param parallel the threads
     * @throws StudyRefused when design and weather do not go together
     */
    public static BackupResult run(
            Design asked, List<Weather> files, Engine engine, Question question, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(asked, files, question.warmUp().days());
        return new BackupStudy(asked, files, engine, question, parallel).result();
    }

    /**
     * The power alone, as with a coldest week that is colder than any in the files.
     *
     * @throws StudyRefused when design and weather do not go together
     */
    public static BackupResult.Need need(
            Design asked, List<Weather> files, Engine engine, Question question, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(asked, files, question.warmUp().days());
        BackupStudy study = new BackupStudy(asked, files, engine, question, parallel);
        List<Double> powers = study.powers();
        return study.need(powers, study.points(powers));
    }

    private BackupResult result() {
        List<Double> powers = powers();
        List<BackupResult.Point> points = points(powers);
        BackupResult.Need need = need(powers, points);
        return new BackupResult(
                elementAssumed,
                need,
                new CoilSearch(design, sites, parallel).coil(need.smallestW().isEmpty()),
                curve(points, need.chosenW().orElse(UNLIMITED_W)),
                warmUps(need.chosenW().orElse(UNLIMITED_W)),
                new WorstSpell(sites, parallel)
                        .spell(need, points.get(points.size() - 1).ratedW()),
                handbook);
    }

    private BackupResult.Curve curve(List<BackupResult.Point> points, double chosenW) {
        boolean neverWorse = Threshold.neverWorse(
                points.stream().map(BackupResult.Point::shortHours).toList());
        return new BackupResult.Curve(
                neverWorse, points, inEach(List.of(chosenW)).get(0));
    }

    private List<Double> powers() {
        return LADDER.stream().map(multiple -> multiple * ladderBaseW()).toList();
    }

    private BackupResult.Need need(List<Double> powers, List<BackupResult.Point> points) {
        OptionalDouble floorW = smallest(powers, floorHeld(points), this::holdsFloor);
        OptionalDouble warmUpW = smallest(powers, parallel.map(powers, this::warmsUp), this::warmsUp);
        return new BackupResult.Need(floorW, warmUpW, common(floorW, warmUpW));
    }

    /** The handbook's power, or what warms the contents up in time where that is more. */
    private double ladderBaseW() {
        double warmUpW = design.contentsHeatCapacityJPerK()
                * Math.max(0, design.control().setpointC() - question.warmUp().fillC())
                / (question.warmUp().days() * 86_400.0);
        return Math.max(50, Math.max(handbook.totalW(), warmUpW));
    }

    private List<BackupResult.Point> points(List<Double> powers) {
        return inEach(powers).stream()
                .map(files -> files.stream().reduce(BackupStudy::worse).orElseThrow())
                .toList();
    }

    /** Each power in each of the files. */
    private List<List<BackupResult.Point>> inEach(List<Double> powers) {
        return parallel.cross(
                powers, sites, (power, site) -> point(power, site.year().year(site.with(power), Account.Keep.SUMS)));
    }

    private static BackupResult.Point worse(BackupResult.Point a, BackupResult.Point b) {
        return new BackupResult.Point(
                a.ratedW(),
                Math.max(a.shortHours(), b.shortHours()),
                Math.max(a.shortKelvinHours(), b.shortKelvinHours()),
                Math.max(a.boughtKWh(), b.boughtKWh()),
                Warnings.worst(List.of(a.warnings(), b.warnings())));
    }

    private static BackupResult.Point point(double power, Account account) {
        Period whole = account.whole();
        return new BackupResult.Point(
                power,
                whole.of(KeyFigures.BELOW_FLOOR_HOURS),
                whole.counted(KeyFigures.SHORTFALL) / Hours.HOUR_S,
                whole.of(BackupPart.BOUGHT),
                account.warnings());
    }

    private List<Boolean> floorHeld(List<BackupResult.Point> points) {
        return points.stream()
                .map(point -> point.shortHours() <= question.shortHours())
                .toList();
    }

    private boolean holdsFloor(double power) {
        return sites.stream().allMatch(site -> site.holdsMinimum(site.with(power)));
    }

    private boolean warmsUp(double power) {
        return sites.stream().allMatch(site -> site.warmsUp(site.with(power)));
    }

    /** The smallest power that meets a demand, from the ladder or above it; absent when not even an unlimited one does. */
    private OptionalDouble smallest(List<Double> powers, List<Boolean> holds, DoublePredicate demand) {
        OptionalDouble onLadder = Threshold.onLadder(powers, holds, demand, parallel);
        return onLadder.isEmpty() && demand.test(UNLIMITED_W)
                ? OptionalDouble.of(Threshold.narrowed(powers.get(powers.size() - 1), UNLIMITED_W, demand, parallel))
                : onLadder;
    }

    private OptionalDouble common(OptionalDouble floorW, OptionalDouble warmUpW) {
        if (floorW.isEmpty() || warmUpW.isEmpty()) {
            return OptionalDouble.empty();
        }
        double needed = Math.max(floorW.getAsDouble(), warmUpW.getAsDouble());
        return question.commonSizesW().stream()
                .mapToDouble(Double::doubleValue)
                .filter(size -> size >= needed)
                .min();
    }

    private List<HoldResult.WarmUp> warmUps(double power) {
        boolean sun = design.solar().isPresent();
        return parallel.map(sites, site -> {
            int from = site.fill().hours().first();
            int most = Math.min(site.fill().runner().file().hours(), from + HoldStudy.MOST_DAYS * HOURS_PER_DAY);
            return WarmingUp.of(
                    site.fill().runner(), site.with(power), question.warmUp().fillC(), new Hours(from, most), sun);
        });
    }
}
