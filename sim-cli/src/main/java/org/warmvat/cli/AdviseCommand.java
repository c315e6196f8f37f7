package org.warmvat.cli;

import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.advise.AdviseAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.question.advise.AdviseResult;
import org.warmvat.question.advise.AdviseStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code advise}: what to change, the first first. */
@Command(
        name = "advise",
        sortOptions = false,
        description = {
            "Runs year, payback, backup, hold and carry on one design and ends in at most seven recommendations: first what can"
                    + " hurt, then what leaves the tank cold, then net energy. Each is run before it is named.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class AdviseCommand extends RunningCommand {

    @Mixin
    private InputArguments arguments;

    @Override
    public Document document() throws Exception {
        Inputs inputs = arguments.read().inYears();
        AdviseResult result = run().parallel(
                        "runs",
                        parallel ->
                                AdviseStudy.run(inputs.design().design(), inputs.weathers(), run().engine(), parallel));
        return AdviseAnswer.of(result, inputs.asked(run()));
    }
}
