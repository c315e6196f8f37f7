package org.warmvat.question.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.warmvat.account.Account;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Values;
import org.warmvat.engine.Engine;
import org.warmvat.question.Parallel;
import org.warmvat.question.compare.CompareResult.Column;
import org.warmvat.question.compare.CompareResult.Difference;
import org.warmvat.question.compare.CompareResult.Judgement;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

/** Runs every design through every weather file, the same run-in and the same hours as a year, and holds them against each other. */
public final class CompareStudy {

    private CompareStudy() {}

    /**
     * Runs them.
     *
     * @param designs the designs
     * @param files the weather files
     * @param engine what integrates
     * @param parallel the threads
     * @throws StudyRefused when a design and a file do not go together, with the faults of all
     * @throws IllegalArgumentException when there are not at least two columns
     */
    public static CompareResult run(List<Design> designs, List<Weather> files, Engine engine, Parallel parallel)
            throws StudyRefused {
        int each = files.size();
        int all = designs.size() * each;
        if (all < 2) {
            throw new IllegalArgumentException("nothing to compare, expected two designs or two weather files");
        }
        check(designs, files);
        List<Runner> runners =
                files.stream().map(file -> new Runner(file, engine)).toList();
        List<Column> columns = parallel.map(
                IntStream.range(0, all).boxed().toList(),
                i -> column(i / each, i % each, designs.get(i / each), runners.get(i % each)));
        return new CompareResult(columns, differences(designs), judgements(columns, designs.size(), each));
    }

    private static void check(List<Design> designs, List<Weather> files) throws StudyRefused {
        Set<String> faults = new LinkedHashSet<>();
        for (int design = 0; design < designs.size(); design++) {
            for (int file = 0; file < files.size(); file++) {
                String which = "design " + (design + 1) + " in weather file " + (file + 1) + ": ";
                StudyRefused.fault(designs.get(design), files.get(file)).ifPresent(fault -> faults.add(which + fault));
            }
        }
        if (!faults.isEmpty()) {
            throw new StudyRefused(List.copyOf(faults));
        }
    }

    private static Column column(int number, int file, Design design, Runner runner) {
        Weather weather = runner.weather(design);
        Account account = runner.year(design, Account.Keep.HOURS);
        return new Column(
                number, file, design, weather, account.whole(), account.months(), account.days(), account.warnings());
    }

    /** The keys whose values are not the same in all designs, in the order of the keys. */
    static List<Difference> differences(List<Design> designs) {
        List<Map<String, String>> each = designs.stream().map(Values::all).toList();
        Set<String> keys = new LinkedHashSet<>();
        each.forEach(values -> keys.addAll(values.keySet()));
        List<Difference> differences = new ArrayList<>();
        for (String key : keys) {
            List<Optional<String>> values =
                    each.stream().map(one -> Optional.ofNullable(one.get(key))).toList();
            if (values.stream().distinct().count() > 1) {
                differences.add(new Difference(key, values));
            }
        }
        return differences;
    }

    private static List<Judgement> judgements(List<Column> columns, int designs, int files) {
        List<List<Integer>> groups = new ArrayList<>();
        if (designs == 1) {
            groups.add(IntStream.range(0, files).boxed().toList());
        } else {
            for (int file = 0; file < files; file++) {
                int own = file;
                groups.add(IntStream.range(0, designs)
                        .map(design -> design * files + own)
                        .boxed()
                        .toList());
            }
        }
        List<Judgement> judgements = new ArrayList<>();
        for (Merit merit : Merit.values()) {
            for (List<Integer> among : groups) {
                List<Integer> best = merit.best(columns, among);
                if (!best.isEmpty()) {
                    judgements.add(new Judgement(merit, among, best));
                }
            }
        }
        return judgements;
    }
}
