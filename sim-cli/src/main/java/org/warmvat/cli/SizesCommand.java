package org.warmvat.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Outputs;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.cli.answer.SizesTelling;
import org.warmvat.cli.answer.StudyResults;
import org.warmvat.cli.answer.VaryTelling;
import org.warmvat.cli.input.DesignDocument;
import org.warmvat.cli.input.InputRefused;
import org.warmvat.cli.input.Scaling;
import org.warmvat.cli.input.ScalingRule;
import org.warmvat.design.Design;
import org.warmvat.study.BriefYear;
import org.warmvat.study.GasByVolume;
import org.warmvat.study.Parallel;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code sizes}: the same design scaled over a range of volumes. */
@Command(
        name = "sizes",
        sortOptions = false,
        description = {
            "Scales a design over a list of volumes, runs each and tells which size first returns more than it eats, over"
                    + " the run and in its worst month.",
            "The geometry stays similar; feed, coils, collector, torque and heater follow rules that are printed and can be"
                    + " replaced."
        })
final class SizesCommand implements Callable<Integer> {

    /** The change is sought until the sizes on both sides of it are as near as this. */
    private static final double NEAR = 1.005;

    private static final int MOST_FAULTS = 20;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private StudyOptions study;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--litres",
            paramLabel = "L",
            split = ",",
            defaultValue = "150,300,600,1200",
            description = "Volumes of slurry, in litres (${DEFAULT-VALUE}).")
    private List<Double> litres;

    @Option(
            names = "--scale",
            paramLabel = "KEY=RULE",
            description = "Another rule for a number: key=power of the volume, key=need (of heat) or key=fixed.")
    private List<String> replaced = List.of();

    @Override
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        List<Double> volumes = litres.stream().distinct().sorted().toList();
        if (volumes.get(0) <= 0 || !Double.isFinite(volumes.get(volumes.size() - 1))) {
            throw new ParameterException(spec.commandLine(), "--litres " + litres + ", expected volumes above 0");
        }
        List<ScalingRule> rules = rules();
        ResultsFolder folder = study.folder(List.of(SizesTelling.CSV), SizesTelling.PICTURES);
        Inputs inputs = arguments.read(design -> Scaling.check(design, rules));
        StudyRefused.check(inputs.design().design(), inputs.weather());
        Scaling scaling = new Scaling(inputs.design(), rules);
        Job job = new Job(
                scaling,
                needW(inputs.weather()),
                new Runner(inputs.weather(), study.engine()),
                inputs.design().design().control().setpointC());
        job.check(volumes);
        try (Parallel parallel = study.parallel(common.quiet(), "sizes")) {
            List<SizesTelling.Size> sizes = parallel.map(volumes, job::run);
            List<Optional<Double>> found = parallel.map(
                    List.<ToDoubleFunction<SizesTelling.Size>>of(
                            SizesTelling.Size::netKWh, SizesTelling.Size::worstMonthKWh),
                    value -> job.change(sizes, value));
            SizesTelling.Thresholds thresholds = new SizesTelling.Thresholds(found.get(0), found.get(1));
            // straight lines between the sizes of the list would cross nothing elsewhere than the verdict says
            List<Double> changes =
                    found.stream().flatMap(Optional::stream).distinct().toList();
            List<SizesTelling.Size> drawn = Stream.concat(sizes.stream(), parallel.map(changes, job::run).stream())
                    .sorted(Comparator.comparingDouble(SizesTelling.Size::litres))
                    .toList();
            study.tell(results(inputs, job, sizes, thresholds, drawn), inputs, folder);
        }
        return ExitCode.DONE.number();
    }

    private StudyResults results(
            Inputs inputs,
            Job job,
            List<SizesTelling.Size> sizes,
            SizesTelling.Thresholds thresholds,
            List<SizesTelling.Size> drawn) {
        SizesTelling.Rules told = new SizesTelling.Rules(
                job.scaling().rules().stream().map(ScalingRule::key).toList(),
                job.scaling().rules().stream().map(ScalingRule::words).toList());
        StudyResults results = SizesTelling.of(inputs.design().design(), study.under(inputs), sizes, told, thresholds);
        return VaryTelling.with(results, SizesTelling.pictures(drawn), study.assumed(inputs));
    }

    private List<ScalingRule> rules() {
        List<ScalingRule> rules = new ArrayList<>();
        for (String text : replaced) {
            try {
                rules.add(ScalingRule.parse(text));
            } catch (IllegalArgumentException wrong) {
                throw new ParameterException(spec.commandLine(), "--scale " + wrong.getMessage(), wrong);
            }
        }
        return rules;
    }

    private static ToDoubleFunction<Design> needW(Weather weather) {
        double coldC = weather.coldestDayC();
        return design -> {
            DerivedFigures figures = DerivedFigures.of(design, weather.meanWindMPerS(), weather.meanAirC(), coldC);
            return figures.coldLossW() + figures.coldFeedW();
        };
    }

    /** Runs a size. */
    private record Job(Scaling scaling, ToDoubleFunction<Design> needW, Runner runner, double ownSetpointC) {

        /** Refuses volumes at which a scaled number is not allowed, all of them at once. */
        void check(List<Double> volumes) {
            List<String> faults = new ArrayList<>();
            for (double volume : volumes) {
                try {
                    scaling.at(volume, needW);
                } catch (InputRefused refused) {
                    faults.addAll(refused.faults());
                }
            }
            if (!faults.isEmpty()) {
                throw new InputRefused(faults.stream().limit(MOST_FAULTS).toList());
            }
        }

        SizesTelling.Size run(double litres) {
            DesignDocument scaled = scaling.at(litres, needW);
            Design design = scaled.design();
            try {
                double methane = GasByVolume.methaneNm3PerDay(design, ownSetpointC);
                double[] outputs = Outputs.of(design, BriefYear.run(design, runner), methane);
                return new SizesTelling.Size(litres, scaling.numbers(scaled), outputs);
            } catch (StudyRefused refused) {
                throw new InputRefused(refused.faults());
            }
        }

        /** The volume at which something rises above nothing, between the last size below and the first above. */
        Optional<Double> change(List<SizesTelling.Size> sizes, ToDoubleFunction<SizesTelling.Size> value) {
            for (int i = 1; i < sizes.size(); i++) {
                if (value.applyAsDouble(sizes.get(i)) > 0) {
                    return value.applyAsDouble(sizes.get(i - 1)) > 0
                            ? Optional.empty()
                            : Optional.of(between(
                                    sizes.get(i - 1).litres(), sizes.get(i).litres(), value));
                }
            }
            return Optional.empty();
        }

        private double between(double small, double large, ToDoubleFunction<SizesTelling.Size> value) {
            double below = small;
            double above = large;
            while (above / below > NEAR) {
                double middle = Math.sqrt(below * above);
                if (value.applyAsDouble(run(middle)) > 0) {
                    above = middle;
                } else {
                    below = middle;
                }
            }
            return above;
        }
    }
}
