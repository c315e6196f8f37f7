package org.warmvat.cli;

import java.util.Optional;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.year.YearAnswer;
import org.warmvat.cli.answer.year.YearPayback;
import org.warmvat.cli.option.Badness;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.design.Design;
import org.warmvat.question.payback.PaybackStudy;
import org.warmvat.question.sensitive.SensitiveResult;
import org.warmvat.question.sensitive.SensitiveStudy;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.tank.Runner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code year}: runs a design through its weather, answers in words and writes the results folder. */
@Command(
        name = "year",
        addMethodSubcommands = false,
        sortOptions = false,
        description = {
            "Runs the tank through every hour of a weather file and says whether it kept warm, what sun and backup heater gave,"
                    + " what the machinery took, and what is left of the gas.",
            "Writes a folder with the report, tables and pictures. Without a design or weather the built-in invented"
                    + " demonstration is used."
        })
final class YearCommand extends RunningCommand {

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--payback",
            description =
                    "Also tell from where on more insulation or collector no longer pays; runs some more design-years.")
    private boolean payback;

    @Override
    public Document document() throws Exception {
        return arguments.eachYear(this::ofYear, Badness::littleNet);
    }

    private Document ofYear(Inputs inputs) throws Exception {
        Runner runner = new Runner(inputs.weather(), run().engine());
        YearResult result = YearStudy.run(
                inputs.design().design(), runner, run().hours(inputs.weather().hours()));
        Optional<YearPayback> more =
                payback ? Optional.of(payback(inputs.design().design(), runner, result.whole())) : Optional.empty();
        Asked asked = inputs.asked(run());
        return YearAnswer.of(
                result, new YearAnswer.Beside(more, Optional.of(sensitive(asked)), steadiness(asked)), asked);
    }

    private SensitiveResult sensitive(Asked asked) throws Exception {
        return run().parallel(
                        "runs",
                        parallel -> SensitiveStudy.run(asked.design(), asked.unstated(), firstYear(asked), parallel));
    }

    private YearPayback payback(Design design, Runner runner, Period year) throws Exception {
        return new YearPayback(
                design,
                year.hours(),
                year.hours() < PaybackStudy.YEAR_H
                        ? Optional.empty()
                        : Optional.of(
                                run().parallel("runs", parallel -> PaybackStudy.run(design, year, runner, parallel))));
    }
}
