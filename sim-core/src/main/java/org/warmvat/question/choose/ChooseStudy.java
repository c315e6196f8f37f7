package org.warmvat.question.choose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.warmvat.account.Warnings;
import org.warmvat.design.Design;
import org.warmvat.engine.Engine;
import org.warmvat.question.CyclicWeather;
import org.warmvat.question.Figures;
import org.warmvat.question.Parallel;
import org.warmvat.question.hold.ColdFill;
import org.warmvat.question.vary.Pareto;
import org.warmvat.question.year.BriefYear;
import org.warmvat.search.GridSearch;
import org.warmvat.search.Judgement;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/**
 * Finds the best design among those that can be bought (model section 18). Every design that is judged at all is run in full through all
 * weather files. Where the runs would be many, coordinate and neighbour search from several starts stands for trying all; what follows
 * from an easier choice (more insulation, more heater) is passed over. The designs named are those that none of their neighbours, one
 * step away in each choice, beats: those neighbours are always run, passed over or not.
 */
public final class ChooseStudy {

    /** Runs through a weather file up to which every combination is tried: some minutes of one processor at the most. */
    public static final int MOST_EXHAUSTIVE_RUNS = 2000;

    /** How many designs are named: the best, the runner-up and the five that come next. */
    private static final int NAMED = 7;

    private static final double TIE = 1e-9;
    private static final double[] SHARES_OF_SECOND_AIM = {0.25, 0.5, 0.75, 1};
    private static final int AIMS = Aim.ALL.size();
    private static final double HOURS_PER_DAY = 24;

    private final Catalogue catalogue;
    private final Aim by;
    private final Parallel parallel;
    private final List<Site> sites;
    private final GridSearch search;
    private final Map<List<Integer>, Candidate> run = new HashMap<>();
    private final boolean exhaustive;

    /** A weather file, and its cold fill where a limit asks for one. */
    private record Site(Runner runner, List<ColdFill> fill) {}

    private ChooseStudy(Catalogue catalogue, Aim by, List<Weather> files, Engine engine, Parallel parallel, Way way) {
        this.catalogue = catalogue;
        this.by = by;
        this.parallel = parallel;
        sites = files.stream().map(file -> site(file, engine)).toList();
        boolean[] easing = way.skipping()
                ? catalogue.easing()
                : new boolean[catalogue.choices().size()];
        search = new GridSearch(catalogue.sizes(), easing, this::judged);
        exhaustive = catalogue.points() <= way.mostExhaustiveRuns() / files.size();
    }

    /**
     * How to search.
     *
     * @param mostExhaustiveRuns runs up to which every combination is tried
     * @param skipping whether what follows from an easier choice is passed over
     */
    public record Way(int mostExhaustiveRuns, boolean skipping) {

        /** The usual one. */
        public static final Way USUAL = new Way(MOST_EXHAUSTIVE_RUNS, true);
    }

    private Site site(Weather file, Engine engine) {
        List<ColdFill> fill = new ArrayList<>();
        catalogue.limits().warmUpDays().ifPresent(most -> {
            int days = (int) Math.ceil(most);
            fill.add(ColdFill.of(catalogue.drawn(), file, days, 2 * days + 7, engine));
        });
        return new Site(new Runner(file, engine), fill);
    }

    /**
     * Finds the best design.
     *
     * @param catalogue what can be bought
     * @param by what is to be best
     * @param files one or several weather files
     * @param engine what integrates
     * @param way how to search
     * @param parallel the threads
     * @throws StudyRefused when design and weather do not go together
     */
    public static ChooseResult run(
            Catalogue catalogue, Aim by, List<Weather> files, Engine engine, Way way, Parallel parallel)
            throws StudyRefused {
        StudyRefused.check(
                catalogue.drawn(), files, catalogue.limits().warmUpDays().orElse(0));
        return new ChooseStudy(catalogue, by, files, engine, parallel, way).result();
    }

    /**
     * Does only a part of the runs, so that a later whole finds them kept: of every combination where all are tried, else of the search
     * from some of its starts.
     *
     * @param part which part, counted from 1
     * @param parts how many parts there are
     * @return how many runs were done
     * @throws StudyRefused when design and weather do not go together
     */
    public static int runPart(
            Catalogue catalogue, Aim by, List<Weather> files, Engine engine, Parallel parallel, int part, int parts)
            throws StudyRefused {
        StudyRefused.check(
                catalogue.drawn(), files, catalogue.limits().warmUpDays().orElse(0));
        ChooseStudy study = new ChooseStudy(catalogue, by, files, engine, parallel, Way.USUAL);
        return study.part(part, parts);
    }

    private int part(int part, int parts) {
        if (exhaustive) {
            List<List<Integer>> every = search.every();
            parallel.expect(every.size() * sites.size() / parts);
            search.judgeAll(every.subList(share(every.size(), part - 1, parts), share(every.size(), part, parts)));
        } else {
            List<List<Integer>> starts = starts();
            descend(starts.subList(share(starts.size(), part - 1, parts), share(starts.size(), part, parts)));
        }
        return run.size() * sites.size();
    }

    private static int share(int all, int part, int parts) {
        return (int) ((long) all * part / parts);
    }

    private ChooseResult result() {
        if (exhaustive) {
            parallel.expect((int) (catalogue.points() * sites.size()));
            search.exhaust();
            if (allowed().isEmpty()) {
                search.judgeAll(search.every());
            }
        } else {
            descend(starts());
            for (double share : SHARES_OF_SECOND_AIM) {
                search.descend(List.of(search.ranked(only(by)).get(0)), mixed(share));
            }
        }
        List<Candidate> named = settled();
        List<Figures> ofDrawn = new ArrayList<>();
        parallel.runs(
                sites.size(), file -> -1L - file, file -> figures(catalogue.drawn(), sites.get(file)), ofDrawn::add);
        return new ChooseResult(
                by, named, ties(named.get(0)), front(), influence(named.get(0)), drawn(ofDrawn), effort());
    }

    /** Everything at its first, in the middle and at its last, and each choice alone at its last. */
    private List<List<Integer>> starts() {
        int[] sizes = catalogue.sizes();
        Set<List<Integer>> starts = new LinkedHashSet<>();
        starts.add(IntStream.of(sizes).mapToObj(size -> size / 2).toList());
        starts.add(IntStream.of(sizes).mapToObj(size -> size - 1).toList());
        starts.add(IntStream.of(sizes).mapToObj(size -> 0).toList());
        for (int axis = 0; axis < sizes.length; axis++) {
            int at = axis;
            starts.add(IntStream.range(0, sizes.length)
                    .mapToObj(i -> i == at ? sizes[i] - 1 : sizes[i] / 3)
                    .toList());
        }
        return List.copyOf(starts);
    }

    private void descend(List<List<Integer>> starts) {
        search.descend(starts, only(by));
        search.descend(starts, only(by.beside()));
    }

    private static double[] only(Aim aim) {
        return Judgement.only(aim.place(), AIMS);
    }

    /** Both aims, the second by a share, each over its spread among the designs that keep to the limits. */
    private double[] mixed(double share) {
        double[] weights = new double[AIMS];
        weights[by.place()] = (1 - share) / spread(by);
        weights[by.beside().place()] = share / spread(by.beside());
        return weights;
    }

    private double spread(Aim aim) {
        double[] sorted =
                allowed().stream().mapToDouble(one -> one.aim(aim)).sorted().toArray();
        return sorted.length == 0 || sorted[sorted.length - 1] == sorted[0] ? 1 : sorted[sorted.length - 1] - sorted[0];
    }

    /** The designs named, once none of their neighbours is better placed; and all that stands in a line with the best. */
    private List<Candidate> settled() {
        List<Candidate> named = named();
        List<Candidate> before;
        do {
            before = named;
            Set<List<Integer>> near = new LinkedHashSet<>();
            for (int axis = 0; axis < catalogue.choices().size(); axis++) {
                near.addAll(search.line(named.get(0).point(), axis));
            }
            named.forEach(one -> near.addAll(search.neighbours(one.point())));
            search.judgeAll(List.copyOf(near));
            named = named();
        } while (!named.equals(before));
        return named;
    }

    /** The best and those that follow; where some keep to the limits, none that does not. */
    private List<Candidate> named() {
        List<Candidate> best = ranked();
        return best.stream()
                .filter(one -> one.allowed() == best.get(0).allowed())
                .limit(NAMED)
                .toList();
    }

    /** All designs run, the best first, each once. */
    private List<Candidate> ranked() {
        return search.ranked(only(by)).stream()
                .map(catalogue::plain)
                .distinct()
                .map(run::get)
                .toList();
    }

    private List<Candidate> allowed() {
        return run.values().stream()
                .filter(Candidate::allowed)
                .sorted(Comparator.comparingLong(one -> catalogue.number(one.point())))
                .toList();
    }

    private List<Candidate> ties(Candidate best) {
        double aim = best.aim(by);
        return allowed().stream()
                .filter(one -> !one.equals(best) && Math.abs(one.aim(by) - aim) <= TIE * Math.max(1, Math.abs(aim)))
                .toList();
    }

    private ChooseResult.Front front() {
        List<Candidate> all = allowed();
        double[] first = all.stream().mapToDouble(one -> one.aim(by)).toArray();
        double[] second = all.stream().mapToDouble(one -> one.aim(by.beside())).toArray();
        int[] order = Pareto.inOrder(Pareto.front(first, second), first);
        return new ChooseResult.Front(
                by, by.beside(), all, IntStream.of(order).mapToObj(all::get).toList());
    }

    private List<ChooseResult.Influence> influence(Candidate best) {
        List<ChooseResult.Influence> influence = new ArrayList<>();
        for (int axis = 0; axis < catalogue.choices().size(); axis++) {
            int at = axis;
            Choice choice = catalogue.choices().get(axis);
            List<Candidate> line = search.line(best.point(), axis).stream()
                    .map(point -> run.get(catalogue.plain(point)))
                    .toList();
            Candidate worst =
                    line.stream().filter(Candidate::allowed).reduce(best, (a, b) -> b.aim(by) > a.aim(by) ? b : a);
            influence.add(new ChooseResult.Influence(
                    choice.name(),
                    worst.aim(by) - best.aim(by),
                    choice.at(worst.point().get(at)).shown(),
                    (int) line.stream().filter(one -> !one.allowed()).count(),
                    line.size()));
        }
        return influence;
    }

    private ChooseResult.Drawn drawn(List<Figures> files) {
        Yearly yearly = Yearly.of(files);
        double outlay = catalogue.drawnOutlay().orElse(Double.NaN);
        return new ChooseResult.Drawn(
                yearly, outlay, perYear(outlay, yearly), Candidate.broken(catalogue.limits(), yearly, outlay));
    }

    private ChooseResult.Effort effort() {
        Map<String, Integer> barredBy = new TreeMap<>();
        run.values().forEach(one -> one.broken().forEach(limit -> barredBy.merge(limit.key(), 1, Integer::sum)));
        return new ChooseResult.Effort(
                (run.size() + 1) * sites.size(),
                catalogue.points(),
                run.size(),
                search.skipped(),
                exhaustive,
                barredBy);
    }

    private double perYear(double outlay, Yearly yearly) {
        Terms terms = catalogue.terms();
        return terms.annuityPerYear() * outlay
                + yearly.money().energy()
                + terms.upkeepPerYear()
                - yearly.money().gasWorth();
    }

    private List<Judgement> judged(List<List<Integer>> points) {
        runAll(new LinkedHashSet<>(points.stream().map(catalogue::plain).toList()));
        return points.stream()
                .map(point -> run.get(catalogue.plain(point)).judgement())
                .toList();
    }

    private void runAll(Collection<List<Integer>> plain) {
        List<List<Integer>> fresh =
                plain.stream().filter(point -> !run.containsKey(point)).toList();
        int files = sites.size();
        List<Figures> ofOne = new ArrayList<>();
        Iterator<List<Integer>> points = fresh.iterator();
        parallel.runs(
                fresh.size() * files,
                index -> catalogue.number(fresh.get(index / files)) * files + index % files,
                index -> figures(catalogue.design(fresh.get(index / files)), sites.get(index % files)),
                figures -> {
                    ofOne.add(figures);
                    if (ofOne.size() == files) {
                        List<Integer> point = points.next();
                        run.put(point, candidate(point, List.copyOf(ofOne)));
                        ofOne.clear();
                    }
                });
    }

    private static Figures figures(Design design, Site site) {
        BriefYear year = BriefYear.checked(design, site.runner());
        double days = Double.NaN;
        for (ColdFill fill : site.fill()) {
            days = fill.hours(CyclicWeather.design(design, site.runner().file()), Limits.FILL_C)
                            .orElse(Double.POSITIVE_INFINITY)
                    / HOURS_PER_DAY;
        }
        return new Figures(Yearly.numbers(design, year, days), year.warnings());
    }

    private Candidate candidate(List<Integer> point, List<Figures> files) {
        Yearly yearly = Yearly.of(files);
        double outlay = catalogue.outlay(point, catalogue.design(point));
        return new Candidate(
                point,
                catalogue.chosen(point),
                yearly,
                new Candidate.Cost(outlay, perYear(outlay, yearly)),
                Candidate.broken(catalogue.limits(), yearly, outlay),
                Warnings.worst(files.stream().map(Figures::warnings).toList()));
    }
}
