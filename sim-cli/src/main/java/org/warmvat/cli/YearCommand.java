package org.warmvat.cli;

import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.GasWords;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.year.YearAnswer;
import org.warmvat.cli.answer.year.YearPayback;
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
        Inputs all = arguments.read().inYears();
        Optional<YearPayback> more = payback ? Optional.of(payback(all)) : Optional.empty();
        return InputArguments.eachYear(all, inputs -> ofYear(inputs, more));
    }

    private Judged ofYear(Inputs inputs, Optional<YearPayback> more) throws Exception {
        Runner runner = new Runner(inputs.weather(), run().engine());
        YearResult result = YearStudy.run(
                inputs.design().design(), runner, run().hours(inputs.weather().hours()));
        Subject asked = inputs.asked(run());
        YearAnswer.Beside beside = new YearAnswer.Beside(more, Optional.of(sensitive(asked)), steadiness(asked));
        return new Judged(YearAnswer.of(result, beside, asked), -GasWords.leadingKWh(result.whole()));
    }

    private SensitiveResult sensitive(Subject asked) throws Exception {
        return run().parallel(
                        "runs",
                        parallel -> SensitiveStudy.run(asked.design(), asked.unstated(), firstYear(asked), parallel));
    }

    /** Over all whole years at once: what saves in one year alone pays nothing. */
    private YearPayback payback(Inputs all) throws Exception {
        Design design = all.design().design();
        List<Runner> runners = all.weathers().stream()
                .filter(weather -> weather.hours() >= PaybackStudy.YEAR_H)
                .map(weather -> new Runner(weather, run().engine()))
                .toList();
        Optional<PaybackStudy.Result> result = runners.isEmpty()
                ? Optional.empty()
                : Optional.of(run().parallel("runs", parallel -> PaybackStudy.run(design, runners, parallel)));
        return new YearPayback(
                design, all.asked(run()).currencyOfPayback(), all.weather().hours(), runners.size(), result);
    }
}
