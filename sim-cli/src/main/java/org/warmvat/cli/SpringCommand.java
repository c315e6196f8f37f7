package org.warmvat.cli;

import java.time.MonthDay;
import java.util.List;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.spring.SpringAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.question.spring.SpringStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code spring}: when to start a cold tank. */
@Command(
        name = "spring",
        sortOptions = false,
        description = {
            "Says when to start a cold tank: for each date how long it takes to reach the set-point by the sun alone and with the"
                    + " backup heater, what heat that takes, and from which date the tank gives more within a year than it takes.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class SpringCommand extends RunningCommand {

    private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--from",
            paramLabel = "MM-DD",
            split = ",",
            arity = "1..*",
            description = "Dates to start on (the 1st and 15th of each month).")
    private List<MonthDay> from = List.of();

    @Override
    public Document document() throws Exception {
        if (from.contains(LEAP_DAY)) {
            throw run().wrong("--from 02-29, expected a day of every year as MM-DD");
        }
        List<MonthDay> dates = from.isEmpty() ? SpringStudy.usualDates() : List.copyOf(from);
        return arguments.eachYear(inputs -> ofYear(inputs, dates));
    }

    private Judged ofYear(Inputs inputs, List<MonthDay> dates) throws Exception {
        SpringStudy.Result result = run().parallel(
                        "starts",
                        parallel -> SpringStudy.run(
                                inputs.design().design(), inputs.weather(), run().engine(), dates, parallel));
        Subject asked = inputs.asked(run());
        double earliest = result.earliestThatPays()
                .map(start -> start.date().getMonthValue() + start.date().getDayOfMonth() / 100.0)
                .orElse(Double.POSITIVE_INFINITY);
        return new Judged(SpringAnswer.of(result, steadiness(asked), asked), earliest);
    }
}
