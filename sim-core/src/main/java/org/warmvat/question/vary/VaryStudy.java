package org.warmvat.question.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.warmvat.account.Warnings;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.Figures;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Runner;

/** Runs a design once for every combination of some of its numbers. */
public final class VaryStudy {

    private static final String LOADING = "loading";

    private final Grid grid;
    private final Design base;
    private final Runner runner;
    private final Outputs outputs;

    /**
     * A study.
     *
     * @param grid the combinations
     * @param base the design whose numbers are exchanged
     * @param runner starts it in its weather
     */
    public VaryStudy(Grid grid, Design base, Runner runner) {
        this.grid = grid;
        this.base = base;
        this.runner = runner;
        outputs = new Outputs(runner.books(base));
    }

    /** Names of the outputs. */
    public List<String> outputs() {
        return outputs.names();
    }

    /**
     * Runs consecutive combinations.
     *
     * @param from the first of them
     * @param to the one behind the last
     * @throws org.warmvat.design.keys.Refused when a combination is not allowed
     * @throws org.warmvat.tank.StudyRefused when a design and the weather do not go together
     * @throws org.warmvat.engine.EngineFailure when a run cannot be completed
     * @throws org.warmvat.account.LedgerOpen when a balance does not close
     * @throws java.util.concurrent.CancellationException when the thread is interrupted
     */
    public Sweep run(int from, int to, Parallel parallel) {
        return run(from, to, 0, parallel);
    }

    /**
     * The same among other weather.
     *
     * @param before how many runs in other weather are numbered before these
     */
    public Sweep run(int from, int to, long before, Parallel parallel) {
        List<double[]> values = new ArrayList<>(to - from);
        List<double[]> rows = new ArrayList<>(to - from);
        Warnings.Worst worst = new Warnings.Worst();
        Heaviest heaviest = new Heaviest();
        parallel.runs(to - from, index -> before + from + index, index -> one(from + index), one -> {
            values.add(grid.values(from + rows.size()));
            rows.add(one.numbers());
            heaviest.add(one.warnings());
            worst.add(one.warnings().stream()
                    .filter(warning -> !warning.key().equals(LOADING))
                    .toList());
        });
        List<Warning> warnings = new ArrayList<>(worst.list());
        heaviest.told().ifPresent(warnings::add);
        return new Sweep(
                grid.keys(),
                grid.axes().stream().mapToInt(axis -> axis.values().size()).toArray(),
                values,
                outputs.names(),
                rows,
                List.copyOf(warnings));
    }

    private Figures one(int index) {
        Design design = grid.design(base, index);
        double methane = GasByVolume.methaneNm3PerDay(design, base.control().setpointC());
        BriefYear year = BriefYear.run(design, runner);
        List<Warning> warnings = new ArrayList<>(year.warnings());
        loading(design, grid.named(index)).ifPresent(warnings::add);
        return new Figures(outputs.of(design, year, methane), warnings);
    }

    /** Of the runs with a high loading the one with the highest, and how many they are. */
    private static final class Heaviest {
        private int runs;
        private Optional<Warning> worst = Optional.empty();

        void add(List<Warning> run) {
            for (Warning warning : run) {
                if (warning.key().equals(LOADING)) {
                    runs++;
                    worst = worst.filter(known -> known.worst() >= warning.worst())
                            .or(() -> Optional.of(warning));
                }
            }
        }

        Optional<Warning> told() {
            return worst.map(one -> new Warning(
                    one.key(),
                    one.sentence() + (runs == 1 ? "" : " So it is in " + runs + " of the runs."),
                    runs,
                    one.worst()));
        }
    }

    /** A caution where the loading is high for the temperature. */
    private static Optional<Warning> loading(Design design, String named) {
        double loading = GasByVolume.loading(design);
        double most = GasByVolume.cautiousLoading(design);
        return loading > most
                ? Optional.of(new Warning(
                        LOADING,
                        String.format(
                                Locale.ROOT,
                                "At %s the organic loading rate of %.3g kg of volatile solids per cubic metre and day is high"
                                        + " for %.1f °C: above %.3g (3 at 35 °C, lowered as digestion slows; common practice,"
                                        + " no source) a tank may turn sour, which this model does not show.",
                                named,
                                loading,
                                design.control().setpointC(),
                                most),
                        1,
                        loading))
                : Optional.empty();
    }
}
