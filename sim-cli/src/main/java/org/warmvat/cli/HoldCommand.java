package org.warmvat.cli;

import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.hold.HoldAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.question.hold.HoldResult;
import org.warmvat.question.hold.HoldStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hold}: heat fails; how long does the tank stay warm? And the warm-up from cold. */
@Command(
        name = "hold",
        sortOptions = false,
        description = {
            "Says how long the tank stays warm when its heater or the power fails at the worst moment, how long a repair may"
                    + " take, and how long a cold fill takes to warm up.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class HoldCommand extends RunningCommand {

    private static final double LEAST_C = -40;
    private static final double MOST_C = 75;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--from",
            paramLabel = "MM-DD",
            description = "The heat fails at the beginning of this day (at the worst hour of the file).")
    private Optional<MonthDay> from = Optional.empty();

    @Option(names = "--month", paramLabel = "1-12", description = "The heat fails at the worst hour of this month.")
    private Optional<Integer> month = Optional.empty();

    @Option(
            names = "--temperatures",
            paramLabel = "C",
            split = ",",
            description =
                    "Slurry temperatures to reach, °C, with commas between (the minimum, and 5, 10 and 20 K below the"
                            + " set-point). The highest decides which moment is the worst.")
    private List<Double> temperaturesC = List.of();

    @Option(
            names = "--fill",
            paramLabel = "C",
            defaultValue = "10",
            description = "Temperature of a cold fill, °C (${DEFAULT-VALUE}).")
    private double fillC;

    @Override
    public Document document() throws Exception {
        run().within("--fill", fillC, 0, MOST_C);
        temperaturesC.forEach(celsius -> run().within("--temperatures", celsius, LEAST_C, MOST_C));
        HoldStudy.Question question = new HoldStudy.Question(when(), temperaturesC, fillC);
        return arguments.eachYear(inputs -> ofYear(inputs, question));
    }

    private Judged ofYear(Inputs inputs, HoldStudy.Question question) throws Exception {
        HoldResult result = run().parallel(
                        "runs",
                        parallel -> HoldStudy.run(
                                inputs.design().design(), inputs.weather(), run().engine(), question, parallel));
        Subject asked = inputs.asked(run());
        return new Judged(HoldAnswer.of(result, steadiness(asked), asked), -heldHours(result));
    }

    /** Hours until the highest temperature is reached when the heater fails. */
    private static double heldHours(HoldResult result) {
        return result.failures().stream()
                .filter(failure -> failure.cause() == HoldResult.Cause.HEATER)
                .findFirst()
                .map(failure -> failure.hours().get(0).orElse(Double.MAX_VALUE))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private HoldStudy.When when() {
        if (from.isPresent() && month.isPresent()) {
            throw run().wrong("--from and --month, expected one of them");
        }
        if (month.isPresent()) {
            run().within("--month", month.get(), 1, 12);
            return new HoldStudy.In(Month.of(month.get()));
        }
        return from.<HoldStudy.When>map(HoldStudy.At::new).orElseGet(HoldStudy.Anytime::new);
    }
}
