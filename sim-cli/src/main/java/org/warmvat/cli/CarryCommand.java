package org.warmvat.cli;

import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Subject;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.carry.CarryAnswer;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.design.Design;
import org.warmvat.question.Window;
import org.warmvat.question.carry.CarryResult;
import org.warmvat.question.carry.CarryStudy;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code carry}: can the solar coil carry the load alone between two dates? */
@Command(
        name = "carry",
        sortOptions = false,
        description = {
            "Says whether the solar coil can carry the tank alone between two dates: how long it keeps warm, from which date on"
                    + " it carries, what is missing, and what would make it carry.",
            "Without a design or weather the built-in invented demonstration is used."
        })
final class CarryCommand extends RunningCommand {

    private static final double MOST_HOURS = 8784;
    private static final double MOST_AREA_M2 = 1000;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--from",
            paramLabel = "MM-DD",
            defaultValue = "03-01",
            description = "First day (${DEFAULT-VALUE}).")
    private MonthDay from;

    @Option(
            names = "--to",
            paramLabel = "MM-DD",
            defaultValue = "05-31",
            description = "Last day, next year's where it lies before the first (${DEFAULT-VALUE}).")
    private MonthDay to;

    @Option(
            names = "--short-hours",
            paramLabel = "N",
            defaultValue = "0",
            description = "Hours below the minimum temperature that are allowed (${DEFAULT-VALUE}).")
    private double shortHours;

    @Option(
            names = "--most-area",
            paramLabel = "M2",
            description = "Largest collector to try, m² (ten times the design's, at least 1).")
    private Optional<Double> mostAreaM2 = Optional.empty();

    @Override
    public Document document() throws Exception {
        run().within("--short-hours", shortHours, 0, MOST_HOURS);
        mostAreaM2.ifPresent(area -> run().within("--most-area", area, 0.01, MOST_AREA_M2));
        CarryStudy.Question question = new CarryStudy.Question(
                shortHours, mostAreaM2.map(OptionalDouble::of).orElseGet(OptionalDouble::empty));
        return arguments.eachYear(inputs -> ofYear(inputs, question));
    }

    private Judged ofYear(Inputs inputs, CarryStudy.Question question) throws Exception {
        Design design = inputs.design().design();
        Weather weather = inputs.weather();
        Window window = Window.of(weather, from, to);
        CarryResult result = run().parallel(
                        "runs",
                        parallel -> CarryStudy.run(design, weather, window, run().engine(), question, parallel));
        Subject asked = inputs.asked(run());
        double shortfall = result.withBackup().shortfallKWh();
        // of years with as many hours short the one that lacks more heat is the worse
        return new Judged(
                CarryAnswer.of(result, steadiness(asked), asked, shortHours),
                result.alone().warmth().shortHours() + shortfall / (1 + shortfall));
    }
}
