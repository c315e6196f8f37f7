package org.warmvat.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.warmvat.account.Warnings;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Words;
import org.warmvat.cli.answer.vary.Sweep;
import org.warmvat.cli.answer.vary.VaryAnswer;
import org.warmvat.cli.file.Axis;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.Grid;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.vary.GasByVolume;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code vary}: numbers of the design over lists or ranges. */
@Command(
        name = "vary",
        sortOptions = false,
        description = {
            "Runs a design once for every combination of one to three of its numbers and tells which does best; writes a"
                    + " table of all runs, a picture and a report.",
            "A number is named by its key, such as solar.area_m2, envelope.insulation_mm or"
                    + " envelope.wall.pir_foam.thickness_mm (envelope.wall[1].thickness_mm is the same by position)."
        })
final class VaryCommand extends RunningCommand {

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUES",
            description = "A number and its values: v1,v2,v3 or from:to:step; up to three times (solar.area_m2=0:6:1).")
    private List<String> sets = List.of();

    @Option(
            names = "--show",
            paramLabel = "OUTPUT",
            defaultValue = "net_energy_kwh",
            description = "The output to draw, a column of vary.csv (${DEFAULT-VALUE}).")
    private String show;

    @Option(
            names = "--pareto",
            paramLabel = "A,B",
            description = "Two outputs: mark the runs that no other beats in both.")
    private Optional<String> pareto = Optional.empty();

    @Option(names = "--shard", paramLabel = "I/N", description = "Run only part I of N, for a batch scheduler.")
    private Optional<String> shard = Optional.empty();

    @Override
    public Document document() throws Exception {
        Grid grid = run().wanted(() -> new Grid((sets.isEmpty() ? List.of("solar.area_m2=0:6:1") : sets)
                .stream().map(Axis::parse).toList()));
        Shard part = run().wanted(() -> Shard.parse(shard));
        if (shard.isPresent() && pareto.isPresent()) {
            throw run().wrong("--pareto needs all runs, expected no --shard with it");
        }
        Inputs inputs = arguments.read(grid::check);
        Design design = inputs.design().design();
        StudyRefused.check(design, inputs.weather());
        Runner runner = new Runner(inputs.weather(), run().engine());
        Outputs outputs = new Outputs(runner.books(design));
        List<String> front =
                pareto.map(text -> twoOutputs(text, outputs.names())).orElse(List.of());
        String shown = output(show, outputs.names());
        List<Warning> warnings = new ArrayList<>();
        Sweep sweep = sweep(
                grid, part, inputs, new Job(runner, outputs, design.control().setpointC()), warnings);
        Asked asked = inputs.asked(run());
        return shard.isPresent()
                ? VaryAnswer.shard(sweep, asked, part.number(), part.of(), warnings)
                : VaryAnswer.whole(sweep, asked, shown, front, warnings);
    }

    /** One run of many. */
    private record Run(double[] outputs, List<Warning> warnings, Optional<Warning> loading) {}

    /** What all runs share. */
    private record Job(Runner runner, Outputs outputs, double ownSetpointC) {}

    private Sweep sweep(Grid grid, Shard part, Inputs inputs, Job job, List<Warning> warnings) throws Exception {
        int from = part.from(grid.size());
        int count = part.to(grid.size()) - from;
        List<double[]> values = new ArrayList<>(count);
        List<double[]> outputs = new ArrayList<>(count);
        List<Warning> loaded = new ArrayList<>();
        List<List<Warning>> seen = new ArrayList<>();
        run().parallel("runs", parallel -> {
            parallel.each(count, index -> one(grid, from + index, inputs.design(), job), one -> {
                values.add(grid.values(from + outputs.size()));
                outputs.add(one.outputs());
                one.loading().ifPresent(loaded::add);
                seen.add(one.warnings());
            });
            return count;
        });
        warnings.addAll(Warnings.worst(seen));
        loaded.stream()
                .max(Comparator.comparingDouble(Warning::worst))
                .map(worst -> new Warning(
                        worst.key(),
                        worst.sentence()
                                + (loaded.size() == 1 ? "" : " So it is in " + loaded.size() + " of the runs."),
                        loaded.size(),
                        worst.worst()))
                .ifPresent(warnings::add);
        int[] counts =
                grid.axes().stream().mapToInt(axis -> axis.values().size()).toArray();
        return new Sweep(
                grid.axes().stream().map(Axis::key).toList(),
                counts,
                values,
                job.outputs().names(),
                outputs);
    }

    private static Run one(Grid grid, int index, DesignDocument base, Job job) {
        Design design = grid.design(base, index).design();
        try {
            double methane = GasByVolume.methaneNm3PerDay(design, job.ownSetpointC());
            BriefYear year = BriefYear.run(design, job.runner());
            return new Run(
                    job.outputs().of(design, year, methane), year.warnings(), loading(design, grid.named(index)));
        } catch (StudyRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }

    /** A caution where the loading is high for the temperature. */
    private static Optional<Warning> loading(Design design, String named) {
        double loading = GasByVolume.loading(design);
        double most = GasByVolume.cautiousLoading(design);
        return loading > most
                ? Optional.of(new Warning(
                        "loading",
                        "At " + named + " the organic loading rate of " + Words.number(loading)
                                + " kg of volatile solids per cubic metre and day is high for "
                                + Words.celsius(design.control().setpointC()) + ": above " + Words.number(most)
                                + " (3 at 35 °C, lowered as digestion slows; common practice, no source) a tank may turn"
                                + " sour, which this model does not show.",
                        1,
                        loading))
                : Optional.empty();
    }

    private List<String> twoOutputs(String text, List<String> known) {
        String[] names = text.split(",", -1);
        if (names.length != 2) {
            throw run().wrong("--pareto " + text + ", expected two outputs, a,b");
        }
        if (names[0].strip().equals(names[1].strip())) {
            throw run().wrong("--pareto " + text + ", expected two different outputs");
        }
        return List.of(output(names[0].strip(), known), output(names[1].strip(), known));
    }

    private String output(String name, List<String> known) {
        if (known.contains(name)) {
            return name;
        }
        String fact = "\"" + name + "\" is no output";
        throw run().wrong(InputRefused.nearest(name, known)
                .map(near -> fact + ", did you mean " + near + "?")
                .orElse(fact + ", expected one of " + String.join(", ", known)));
    }
}
