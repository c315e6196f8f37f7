package org.warmvat.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.DesignCheck;
import org.warmvat.cli.answer.Paragraph;
import org.warmvat.cli.input.DesignDocument;
import org.warmvat.tank.DerivedFigures;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code check}: every problem of the inputs, and the figures that follow from a design without running it. */
@Command(
        name = "check",
        sortOptions = false,
        description = {
            "Looks through a design, and weather if given, and names every problem; then says what follows from the design"
                    + " alone: loss by part, time constant, retention time, what each coil can pass, gas at steady state.",
            "Without a design the built-in invented demonstration is used."
        })
final class CheckCommand implements Callable<Integer> {

    private static final double USUAL_WIND_M_PER_S = 3;
    private static final double USUAL_AIR_C = 10;
    private static final double USUAL_COLD_C = -10;

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--cold",
            paramLabel = "C",
            description = "Cold air to tell the loss for, °C (the coldest 24 hours of the weather, or -10).")
    private Optional<Double> coldC = Optional.empty();

    @Option(names = "--json", description = "Print the figures as JSON.")
    private boolean json;

    @Override
    public Integer call() throws StudyRefused {
        PrintWriter to = spec.commandLine().getOut();
        DesignCheck check;
        if (arguments.hasWeather()) {
            Inputs inputs = arguments.read();
            StudyRefused.check(inputs.design().design(), inputs.weather());
            check = inWeather(inputs.design(), inputs.weather());
        } else {
            check = alone(arguments.readDesign());
        }
        if (json) {
            to.print(new String(check.json(), StandardCharsets.UTF_8));
        } else {
            print(check, to);
        }
        to.flush();
        return ExitCode.DONE.number();
    }

    private void print(DesignCheck check, PrintWriter to) {
        to.println(check.design().title() + ": no faults found.");
        if (!arguments.hasDesign()) {
            to.println(Inputs.INVENTED_DESIGN);
        }
        for (Paragraph paragraph : check.paragraphs()) {
            to.println();
            to.println(paragraph.heading());
            paragraph.sentences().forEach(sentence -> to.println("  " + sentence));
        }
    }

    private DesignCheck alone(DesignDocument document) {
        DerivedFigures figures =
                DerivedFigures.of(document.design(), USUAL_WIND_M_PER_S, USUAL_AIR_C, coldC.orElse(USUAL_COLD_C));
        return new DesignCheck(document.design(), USUAL_WIND_M_PER_S, figures, notes(document));
    }

    private DesignCheck inWeather(DesignDocument document, Weather weather) {
        DerivedFigures figures = DerivedFigures.of(
                document.design(),
                weather.meanWindMPerS(),
                weather.meanAirC(),
                coldC.orElseGet(() -> weather.coldestDayC()));
        List<String> notes = new ArrayList<>(notes(document));
        notes.addAll(weather.assumptions());
        return new DesignCheck(document.design(), weather.meanWindMPerS(), figures, notes);
    }

    private static List<String> notes(DesignDocument document) {
        List<String> notes = new ArrayList<>(document.cautions());
        notes.addAll(document.assumed());
        return notes;
    }
}
