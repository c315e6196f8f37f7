package org.warmvat.cli;

import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.holder.HolderAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.question.holder.HolderStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code holder}: which gas holder serves the uses. */
@Command(
        name = "holder",
        sortOptions = false,
        description = {
            "Says which is the smallest gas holder that serves the uses of a design through a weather file, and how unmet use and"
                    + " surplus fall with its size.",
            "Without weather the built-in invented demonstration's is used; the design needs gas.holder and gas.uses."
        })
final class HolderCommand extends RunningCommand {

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--unmet",
            paramLabel = "SHARE",
            defaultValue = "0.02",
            description = "Share of what all uses want that may stay unmet, 0 to 1 (${DEFAULT-VALUE}).")
    private double unmet;

    @Override
    public Document document() throws Exception {
        run().within("--unmet", unmet, 0, 1);
        return arguments.eachYear(this::ofYear);
    }

    private Judged ofYear(Inputs inputs) throws Exception {
        HolderStudy.Result result = run().parallel(
                        "holders",
                        parallel -> HolderStudy.run(
                                inputs.design().design(), inputs.weather(), run().engine(), unmet, parallel));
        return new Judged(
                HolderAnswer.of(result, inputs.asked(run())),
                result.smallestM3().orElse(Double.POSITIVE_INFINITY));
    }
}
