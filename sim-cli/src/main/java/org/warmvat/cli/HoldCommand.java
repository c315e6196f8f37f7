package org.warmvat.cli;

import java.io.IOException;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.HoldReport;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.study.HoldResult;
import org.warmvat.study.HoldStudy;
import org.warmvat.study.Parallel;
import org.warmvat.study.StudyRefused;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code hold}: heat fails; how long does the tank stay warm? And the warm-up from cold. */
@Command(
        name = "hold",
        sortOptions = false,
        description = {
            "Says how long the tank stays warm when its heater or the power fails at the worst moment, how long a repair may"
                    + " take, and how long a cold fill takes to warm up.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class HoldCommand implements Callable<Integer> {

    private static final double LEAST_C = -40;
    private static final double MOST_C = 75;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private StudyOptions study;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--from",
            paramLabel = "MM-DD",
            converter = MonthDayConverter.class,
            description = "The heat fails at the beginning of this day (at the worst hour of the file).")
    private Optional<MonthDay> from = Optional.empty();

    @Option(names = "--month", paramLabel = "1-12", description = "The heat fails at the worst hour of this month.")
    private Optional<Integer> month = Optional.empty();

    @Option(
            names = "--temperatures",
            paramLabel = "C",
            split = ",",
            description =
                    "Slurry temperatures to reach, °C, with commas between (the floor, and 5, 10 and 20 K below the"
                            + " set-point). The highest decides which moment is the worst.")
    private List<Double> temperaturesC = List.of();

    @Option(
            names = "--fill",
            paramLabel = "C",
            defaultValue = "10",
            description = "Temperature of a cold fill, °C (${DEFAULT-VALUE}).")
    private double fillC;

    @Override
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        HoldStudy.Question question = question();
        ResultsFolder folder = study.folder(HoldReport.TABLES, HoldReport.PICTURES);
        Inputs inputs = arguments.read();
        HoldResult result;
        try (Parallel parallel = study.parallel(common.quiet(), "runs")) {
            result = HoldStudy.run(inputs.design().design(), inputs.weather(), study.engine(), question, parallel);
        }
        Asked asked = inputs.asked(study.engine().name());
        study.tell(
                HoldReport.of(result, asked, study.pictures(() -> HoldReport.pictures(result, asked))), inputs, folder);
        return ExitCode.DONE.number();
    }

    private HoldStudy.Question question() {
        Amount.within(spec.commandLine(), "--fill", fillC, 0, MOST_C);
        temperaturesC.forEach(celsius -> Amount.within(spec.commandLine(), "--temperatures", celsius, LEAST_C, MOST_C));
        return new HoldStudy.Question(when(), temperaturesC, fillC);
    }

    private HoldStudy.When when() {
        if (from.isPresent() && month.isPresent()) {
            throw new ParameterException(spec.commandLine(), "--from and --month, expected one of them");
        }
        if (month.isPresent()) {
            Amount.within(spec.commandLine(), "--month", month.get(), 1, 12);
            return new HoldStudy.In(Month.of(month.get()));
        }
        return from.<HoldStudy.When>map(HoldStudy.At::new).orElseGet(HoldStudy.Anytime::new);
    }
}
