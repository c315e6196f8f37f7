package org.warmvat.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.vary.VaryAnswer;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.ManyRuns;
import org.warmvat.cli.option.Partable;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.cli.option.Shard;
import org.warmvat.question.Parallel;
import org.warmvat.question.vary.Axis;
import org.warmvat.question.vary.Grid;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.vary.Sweep;
import org.warmvat.question.vary.VaryStudy;
import org.warmvat.tank.Runner;
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
final class VaryCommand extends RunningCommand implements Partable {

    /** Bytes that a run's outputs take until they stand in all files. */
    private static final long MEMORY_OF_A_RUN = 750;

    private static final long MEMORY_WITHOUT_RUNS = 48L << 20;

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
            description =
                    "The output to draw, a column of vary.csv (net_energy_kwh; useful_net_energy_kwh where uses of gas"
                            + " are given).")
    private Optional<String> show = Optional.empty();

    @Option(
            names = "--pareto",
            paramLabel = "A,B",
            description =
                    "Two outputs: mark the best compromises, which no other run betters in one without loss in the other.")
    private Optional<String> pareto = Optional.empty();

    @Mixin
    private ManyRuns many;

    @Override
    public ManyRuns many() {
        return many;
    }

    @Override
    public Document document() throws Exception {
        Grid grid = run().wanted(() -> new Grid((sets.isEmpty() ? List.of("solar.area_m2=0:6:1") : sets)
                .stream().map(Axis::parse).toList()));
        Shard part = many.part(run());
        fits(part, grid.size());
        Inputs inputs = arguments.read(design -> design.judge(grid::check)).inYears();
        int years = inputs.years().size();
        fits(part, Math.multiplyExact(grid.size(), years));
        List<VaryStudy> studies = inputs.weathers().stream()
                .map(weather -> new VaryStudy(grid, inputs.design().design(), new Runner(weather, run().engine())))
                .toList();
        List<String> outputs = studies.get(0).outputs();
        List<String> front = pareto.map(text -> twoOutputs(text, outputs)).orElse(List.of());
        String shown = show.map(name -> output(name, outputs)).orElseGet(() -> Outputs.leading(outputs));
        List<Sweep> sweeps = many.on(run(), inputs, "runs", parallel -> swept(studies, grid.size(), part, parallel));
        if (many.isPart()) {
            return VaryAnswer.part(sweeps, inputs.asked(run()), part.number(), part.of(), many.journal());
        }
        Iterator<Sweep> next = sweeps.iterator();
        Document told = InputArguments.eachYear(inputs, year -> {
            Subject asked = year.asked(run());
            Sweep sweep = next.next();
            return new Judged(VaryAnswer.whole(sweep, steadiness(asked), asked, shown, front), -leftKWh(sweep));
        });
        return VaryAnswer.withRunsOf(sweeps, told);
    }

    /** Energy left in all runs together; where no gas is computed, what is bought counts alone. */
    private static double leftKWh(Sweep sweep) {
        boolean gas = Arrays.stream(sweep.output("net_energy_low_gas_kwh")).anyMatch(Double::isFinite);
        double[] left = sweep.output(gas ? Outputs.leading(sweep.names()) : "backup_bought_kwh");
        double sum = Arrays.stream(left).filter(Double::isFinite).sum();
        return gas ? sum : -sum;
    }

    /** Year by year all combinations, of a part those that fall to it. */
    private static List<Sweep> swept(List<VaryStudy> studies, int size, Shard part, Parallel parallel) {
        int all = size * studies.size();
        parallel.expect(part.to(all) - part.from(all));
        List<Sweep> sweeps = new ArrayList<>();
        for (int year = 0; year < studies.size(); year++) {
            int before = year * size;
            int from = Math.max(0, Math.min(size, part.from(all) - before));
            int to = Math.max(0, Math.min(size, part.to(all) - before));
            sweeps.add(studies.get(year).run(from, to, before, parallel));
        }
        return sweeps;
    }

    private void fits(Shard part, int runs) {
        fits(part.to(runs) - part.from(runs), Runtime.getRuntime().maxMemory());
    }

    /** Refuses more runs than the memory holds the outputs of, before the first of them. */
    void fits(int runs, long memory) {
        long most = (memory - MEMORY_WITHOUT_RUNS) / MEMORY_OF_A_RUN;
        if (runs > most) {
            throw run().wrong(runs + " combinations, expected at most " + Math.max(0, most) + " in a memory of "
                    + (memory >> 20) + " MB (java -Xmx4g gives more; --shard does them in parts)");
        }
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
