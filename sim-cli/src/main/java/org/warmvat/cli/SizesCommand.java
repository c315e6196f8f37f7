package org.warmvat.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.sizes.SizesAnswer;
import org.warmvat.cli.answer.sizes.SizesAnswer.Size;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.file.Scaling;
import org.warmvat.cli.file.ScalingRule;
import org.warmvat.design.Design;
import org.warmvat.question.Parallel;
import org.warmvat.question.vary.GasByVolume;
import org.warmvat.question.vary.Outputs;
import org.warmvat.question.year.BriefYear;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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
final class SizesCommand extends RunningCommand {

    /** The change is sought until the sizes on both sides of it are as near as this. */
    private static final double NEAR = 1.005;

    private static final double LEAST_LITRES = 0.1;
    private static final double MOST_LITRES = 1e10;
    private static final int MOST_FAULTS = 20;

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
    public Document document() throws Exception {
        List<Double> volumes = litres.stream().distinct().sorted().toList();
        volumes.forEach(volume -> run().within("--litres", volume, LEAST_LITRES, MOST_LITRES));
        List<ScalingRule> rules =
                run().wanted(() -> replaced.stream().map(ScalingRule::parse).toList());
        Inputs inputs = arguments.read(design -> Scaling.check(design, rules));
        StudyRefused.check(inputs.design().design(), inputs.weather());
        Job job = new Job(
                new Scaling(inputs.design(), rules),
                needW(inputs.weather()),
                new Runner(inputs.weather(), run().engine()),
                inputs.design().design().control().setpointC());
        job.check(volumes);
        return run().parallel("sizes", parallel -> answer(job, volumes, parallel, inputs));
    }

    private Document answer(Job job, List<Double> volumes, Parallel parallel, Inputs inputs) {
        List<Size> sizes = parallel.map(volumes, job::run);
        List<Optional<Double>> found = parallel.map(
                List.<ToDoubleFunction<Size>>of(Size::netKWh, Size::worstMonthKWh), value -> job.change(sizes, value));
        // straight lines between the sizes of the list would cross nothing elsewhere than the verdict says
        List<Double> changes =
                found.stream().flatMap(Optional::stream).distinct().toList();
        List<Size> drawn = Stream.concat(sizes.stream(), parallel.map(changes, job::run).stream())
                .sorted(Comparator.comparingDouble(Size::litres))
                .toList();
        SizesAnswer.Rules told = new SizesAnswer.Rules(
                job.scaling().rules().stream().map(ScalingRule::key).toList(),
                job.scaling().rules().stream().map(ScalingRule::words).toList());
        SizesAnswer.Thresholds thresholds = new SizesAnswer.Thresholds(found.get(0), found.get(1));
        return SizesAnswer.of(sizes, drawn, told, thresholds, inputs.asked(run()));
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

        Size run(double litres) {
            DesignDocument scaled = scaling.at(litres, needW);
            Design design = scaled.design();
            try {
                double methane = GasByVolume.methaneNm3PerDay(design, ownSetpointC);
                Outputs outputs = new Outputs(runner.books(design));
                BriefYear year = BriefYear.run(design, runner);
                return new Size(
                        litres,
                        scaling.numbers(scaled),
                        outputs.names(),
                        outputs.of(design, year, methane),
                        year.warnings());
            } catch (StudyRefused refused) {
                throw new InputRefused(refused.faults());
            }
        }

        /** The volume at which something rises above nothing, between the last size below and the first above. */
        Optional<Double> change(List<Size> sizes, ToDoubleFunction<Size> value) {
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

        private double between(double small, double large, ToDoubleFunction<Size> value) {
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
