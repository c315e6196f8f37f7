package org.warmvat.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.YearByYear.Judged;
import org.warmvat.cli.answer.check.CheckAnswer;
import org.warmvat.cli.option.AnswerOptions;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.option.InputArguments;
import org.warmvat.cli.option.Inputs;
import org.warmvat.design.Design;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code check}: every problem of the inputs, and the figures that follow from a design without running it. */
@Command(
        name = "check",
        sortOptions = false,
        description = {
            "Looks through a design, and weather if given, and names every problem; then says what follows from the design"
                    + " alone: loss by part, time constant, retention time, what each coil can pass, gas at steady state.",
            "Without a design the built-in invented demonstration is used."
        })
final class CheckCommand implements Answering, Callable<Integer> {

    private static final double USUAL_WIND_M_PER_S = 3;
    private static final double USUAL_AIR_C = 10;
    private static final double USUAL_COLD_C = -10;

    @Mixin
    private AnswerOptions options;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--cold",
            paramLabel = "C",
            description = "Cold air to tell the loss for, °C (the coldest 24 hours of the weather, or -10).")
    private Optional<Double> coldC = Optional.empty();

    @Override
    public Integer call() throws Exception {
        return options.answer(this::document);
    }

    @Override
    public Document document() throws Exception {
        return arguments.hasWeather()
                ? arguments.eachYear(this::ofYear)
                : answer(arguments.readDesign(), USUAL_WIND_M_PER_S, USUAL_AIR_C, coldC.orElse(USUAL_COLD_C))
                        .answer();
    }

    private Judged ofYear(Inputs inputs) throws StudyRefused {
        Design design = inputs.design().design();
        Weather weather = inputs.weather();
        StudyRefused.check(design, weather);
        return answer(
                inputs, weather.meanWindMPerS(), weather.meanAirC(), coldC.orElseGet(() -> weather.coldestDayC()));
    }

    private static Judged answer(Inputs inputs, double windMPerS, double airC, double coldC) {
        DerivedFigures figures = DerivedFigures.of(inputs.design().design(), windMPerS, airC, coldC);
        return new Judged(CheckAnswer.of(inputs.asked("check", ""), windMPerS, figures), figures.coldLossW());
    }
}
