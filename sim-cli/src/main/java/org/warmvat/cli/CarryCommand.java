package org.warmvat.cli;

import java.io.IOException;
import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.CarryReport;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.study.CarryResult;
import org.warmvat.study.CarryStudy;
import org.warmvat.study.Parallel;
import org.warmvat.study.StudyRefused;
import org.warmvat.study.Window;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code carry}: can the solar coil carry the load alone between two dates? */
@Command(
        name = "carry",
        sortOptions = false,
        description = {
            "Says whether the solar coil can carry the tank alone between two dates: how long it keeps warm, from which date on"
                    + " it carries, what is missing, and what would make it carry.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class CarryCommand implements Callable<Integer> {

    private static final double MOST_HOURS = 8784;
    private static final double MOST_AREA_M2 = 1000;

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
            defaultValue = "03-01",
            converter = MonthDayConverter.class,
            description = "First day (${DEFAULT-VALUE}).")
    private MonthDay from;

    @Option(
            names = "--to",
            paramLabel = "MM-DD",
            defaultValue = "05-31",
            converter = MonthDayConverter.class,
            description = "Last day, next year's where it lies before the first (${DEFAULT-VALUE}).")
    private MonthDay to;

    @Option(
            names = "--short-hours",
            paramLabel = "N",
            defaultValue = "0",
            description = "Hours below the floor that are allowed (${DEFAULT-VALUE}).")
    private double shortHours;

    @Option(
            names = "--most-area",
            paramLabel = "M2",
            description = "Largest collector to try, m2 (ten times the design's, at least 1).")
    private Optional<Double> mostAreaM2 = Optional.empty();

    @Override
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        CarryStudy.Question question = question();
        ResultsFolder folder = study.folder(CarryReport.TABLES, CarryReport.PICTURES);
        Inputs inputs = arguments.read();
        CarryResult result;
        try (Parallel parallel = study.parallel(common.quiet(), "runs")) {
            result = CarryStudy.run(
                    inputs.design().design(),
                    inputs.weather(),
                    Window.of(inputs.weather(), from, to),
                    study.engine(),
                    question,
                    parallel);
        }
        Asked asked = inputs.asked(study.engine().name());
        study.tell(
                CarryReport.of(result, asked, shortHours, study.pictures(() -> CarryReport.pictures(result, asked))),
                inputs,
                folder);
        return ExitCode.DONE.number();
    }

    private CarryStudy.Question question() {
        Amount.within(spec.commandLine(), "--short-hours", shortHours, 0, MOST_HOURS);
        mostAreaM2.ifPresent(area -> Amount.within(spec.commandLine(), "--most-area", area, 0.01, MOST_AREA_M2));
        return new CarryStudy.Question(
                shortHours, mostAreaM2.map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
    }
}
