package org.warmvat.question.vary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.warmvat.account.Warnings;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Runner;

/** Runs a design once for every combination of some of its numbers. */
public final class VaryStudy {

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

    /** One run of many. */
    private record Run(double[] outputs, List<Warning> warnings, Optional<Warning> loading) {}

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
        List<double[]> values = new ArrayList<>(to - from);
        List<double[]> rows = new ArrayList<>(to - from);
        List<Warning> loaded = new ArrayList<>();
        List<List<Warning>> seen = new ArrayList<>();
        parallel.each(to - from, index -> one(from + index), one -> {
            values.add(grid.values(from + rows.size()));
            rows.add(one.outputs());
            one.loading().ifPresent(loaded::add);
            seen.add(one.warnings());
        });
        List<Warning> warnings = new ArrayList<>(Warnings.worst(seen));
        heaviest(loaded).ifPresent(warnings::add);
        return new Sweep(
                grid.axes().stream().map(Axis::key).toList(),
                grid.axes().stream().mapToInt(axis -> axis.values().size()).toArray(),
                values,
                outputs.names(),
                rows,
                List.copyOf(warnings));
    }

    private Run one(int index) {
        Design design = grid.design(base, index);
        double methane = GasByVolume.methaneNm3PerDay(design, base.control().setpointC());
        BriefYear year = BriefYear.run(design, runner);
        return new Run(outputs.of(design, year, methane), year.warnings(), loading(design, grid.named(index)));
    }

    private static Optional<Warning> heaviest(List<Warning> loaded) {
        return loaded.stream()
                .max(Comparator.comparingDouble(Warning::worst))
                .map(worst -> new Warning(
                        worst.key(),
                        worst.sentence()
                                + (loaded.size() == 1 ? "" : " So it is in " + loaded.size() + " of the runs."),
                        loaded.size(),
                        worst.worst()));
    }

    /** A caution where the loading is high for the temperature. */
    private static Optional<Warning> loading(Design design, String named) {
        double loading = GasByVolume.loading(design);
        double most = GasByVolume.cautiousLoading(design);
        return loading > most
                ? Optional.of(new Warning(
                        "loading",
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
