package org.warmvat.cli;

import java.util.List;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.sizes.SizesAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.question.sizes.Scaling;
import org.warmvat.question.sizes.ScalingRule;
import org.warmvat.question.sizes.SizesResult;
import org.warmvat.question.sizes.SizesResult.Size;
import org.warmvat.question.sizes.SizesStudy;
import org.warmvat.tank.Runner;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code sizes}: the same design scaled over a range of volumes. */
@Command(
        name = "sizes",
        sortOptions = false,
        description = {
            "Scales a design over a list of volumes, runs each and tells which size first returns more than it takes, over"
                    + " the run and in its worst month.",
            "The geometry stays similar; feed, coils, collector, torque and heater follow rules that are printed and can be"
                    + " replaced."
        })
final class SizesCommand extends RunningCommand {

    private static final double LEAST_LITRES = 0.1;
    private static final double MOST_LITRES = 1e10;

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
        litres.forEach(volume -> run().within("--litres", volume, LEAST_LITRES, MOST_LITRES));
        List<ScalingRule> rules =
                run().wanted(() -> replaced.stream().map(ScalingRule::parse).toList());
        Inputs all = arguments
                .read(design -> design.judge(tank -> Scaling.check(tank, rules)))
                .inYears();
        return InputArguments.eachYear(all, year -> ofYear(year, rules, all.weathers()));
    }

    private Judged ofYear(Inputs inputs, List<ScalingRule> rules, List<Weather> all) throws Exception {
        Runner runner = new Runner(inputs.weather(), run().engine());
        SizesResult result = run().parallel(
                        "sizes",
                        parallel -> inputs.design()
                                .ask(tank -> SizesStudy.run(tank, rules, litres, all, runner, parallel)));
        Subject asked = inputs.asked(run());
        double left = result.sizes().stream().mapToDouble(Size::leadingKWh).sum();
        return new Judged(SizesAnswer.of(result, steadiness(asked), asked), -left);
    }
}
