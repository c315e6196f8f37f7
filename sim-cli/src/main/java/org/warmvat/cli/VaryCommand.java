package org.warmvat.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Outputs;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.cli.answer.StudyResults;
import org.warmvat.cli.answer.Sweep;
import org.warmvat.cli.answer.VaryTelling;
import org.warmvat.cli.input.Axis;
import org.warmvat.cli.input.DesignDocument;
import org.warmvat.cli.input.Grid;
import org.warmvat.cli.input.InputRefused;
import org.warmvat.design.Design;
import org.warmvat.study.BriefYear;
import org.warmvat.study.GasByVolume;
import org.warmvat.study.Parallel;
import org.warmvat.study.Pareto;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

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
final class VaryCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private StudyOptions study;

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
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        Grid grid = wanted(() -> new Grid((sets.isEmpty() ? List.of("solar.area_m2=0:6:1") : sets)
                .stream().map(Axis::parse).toList()));
        Shard part = wanted(() -> Shard.parse(shard));
        if (shard.isPresent() && pareto.isPresent()) {
            throw new ParameterException(spec.commandLine(), "--pareto needs all runs, expected no --shard with it");
        }
        List<String> front = pareto.map(this::twoOutputs).orElse(List.of());
        String shown = output(show);
        ResultsFolder folder = study.folder(List.of(VaryTelling.CSV, VaryTelling.PARETO_CSV), SweepDrawing.NAMES);
        Inputs inputs = arguments.read(grid::check);
        StudyRefused.check(inputs.design().design(), inputs.weather());
        List<String> cautions = new ArrayList<>(inputs.design().cautions());
        Sweep sweep = run(grid, part, inputs, cautions);
        study.tell(results(inputs, sweep, part, front, shown, cautions), inputs, folder);
        return ExitCode.DONE.number();
    }

    private StudyResults results(
            Inputs inputs, Sweep sweep, Shard part, List<String> front, String shown, List<String> cautions) {
        Design design = inputs.design().design();
        String under = study.under(inputs);
        if (shard.isPresent()) {
            return VaryTelling.shard(design, under, sweep, part.number(), part.of());
        }
        List<VaryTelling.Front> fronts = front.isEmpty() ? List.of() : List.of(front(sweep, front));
        if (!SweepDrawing.hasNumbers(sweep, shown)) {
            cautions.add("No picture is drawn of " + shown
                    + ", which means nothing for these designs; --show names another.");
        }
        StudyResults told = VaryTelling.whole(design, under, sweep, fronts, cautions);
        return VaryTelling.with(told, SweepDrawing.of(sweep, shown, fronts), study.assumed(inputs));
    }

    private static VaryTelling.Front front(Sweep sweep, List<String> outputs) {
        double[] first = lessIsBetter(sweep, outputs.get(0));
        boolean[] stands = Pareto.front(first, lessIsBetter(sweep, outputs.get(1)));
        return new VaryTelling.Front(outputs.get(0), outputs.get(1), stands, Pareto.inOrder(stands, first));
    }

    private static double[] lessIsBetter(Sweep sweep, String output) {
        double[] values = sweep.output(output);
        for (int i = 0; i < values.length && Outputs.betterHigh(output); i++) {
            values[i] = -values[i];
        }
        return values;
    }

    /** One run of many. */
    private record Run(double[] outputs, Optional<String> caution) {}

    private Sweep run(Grid grid, Shard part, Inputs inputs, List<String> cautions) {
        int from = part.from(grid.size());
        int count = part.to(grid.size()) - from;
        Runner runner = new Runner(inputs.weather(), study.engine());
        List<double[]> values = new ArrayList<>(count);
        List<double[]> outputs = new ArrayList<>(count);
        double ownSetpointC = inputs.design().design().control().setpointC();
        List<String> loaded = new ArrayList<>();
        try (Parallel parallel = study.parallel(common.quiet(), "runs")) {
            parallel.each(count, index -> one(grid, from + index, inputs.design(), runner, ownSetpointC), run -> {
                values.add(grid.values(from + outputs.size()));
                outputs.add(run.outputs());
                run.caution().ifPresent(loaded::add);
            });
        }
        if (!loaded.isEmpty()) {
            cautions.add(loaded.get(0) + (loaded.size() == 1 ? "" : " So it is in " + loaded.size() + " of the runs."));
        }
        int[] counts =
                grid.axes().stream().mapToInt(axis -> axis.values().size()).toArray();
        return new Sweep(grid.axes().stream().map(Axis::key).toList(), counts, values, outputs);
    }

    private static Run one(Grid grid, int index, DesignDocument base, Runner runner, double ownSetpointC) {
        Design design = grid.design(base, index).design();
        try {
            double methane = GasByVolume.methaneNm3PerDay(design, ownSetpointC);
            double[] outputs = Outputs.of(design, BriefYear.run(design, runner), methane);
            return new Run(outputs, VaryTelling.loadingCaution(design, grid.named(index)));
        } catch (StudyRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }

    private List<String> twoOutputs(String text) {
        String[] names = text.split(",", -1);
        if (names.length != 2) {
            throw new ParameterException(spec.commandLine(), "--pareto " + text + ", expected two outputs, a,b");
        }
        if (names[0].strip().equals(names[1].strip())) {
            throw new ParameterException(spec.commandLine(), "--pareto " + text + ", expected two different outputs");
        }
        return List.of(output(names[0].strip()), output(names[1].strip()));
    }

    private String output(String name) {
        if (Outputs.NAMES.contains(name)) {
            return name;
        }
        String fact = "\"" + name + "\" is no output";
        throw new ParameterException(
                spec.commandLine(),
                InputRefused.nearest(name, Outputs.NAMES)
                        .map(near -> fact + ", did you mean " + near + "?")
                        .orElse(fact + ", expected one of " + String.join(", ", Outputs.NAMES)));
    }

    private interface Reading<T> {
        T read();
    }

    private <T> T wanted(Reading<T> reading) {
        try {
            return reading.read();
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage(), wrong);
        }
    }
}
