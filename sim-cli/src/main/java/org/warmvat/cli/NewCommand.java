package org.warmvat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code new}: a commented starter design for a size and a climate. */
@Command(
        name = "new",
        sortOptions = false,
        description = {
            "Writes a starter design whose insulation, collector, coils and heater follow rules of thumb that stand beside them as"
                    + " comments.",
            "Without a file it is printed. Without weather the climate is that of the built-in invented demonstration."
        })
final class NewCommand implements Callable<Integer> {

    private static final double LEAST_LITRES = 20;
    private static final double MOST_LITRES = 100_000;
    private static final double LEAST_C = 15;
    private static final double MOST_C = 45;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "FILE",
            description = "Where to write it: YAML with comments, or JSON without them where the name ends in .json.")
    private Optional<Path> file = Optional.empty();

    @Option(names = "--litres", paramLabel = "N", defaultValue = "900", description = "Slurry, l (${DEFAULT-VALUE}).")
    private double litres;

    @Option(
            names = "--setpoint",
            paramLabel = "C",
            defaultValue = "36",
            description = "Set-point, °C (${DEFAULT-VALUE}).")
    private double setpointC;

    @Option(names = "--weather", paramLabel = "WEATHER", description = "Weather file of the place.")
    private Optional<Path> weatherFile = Optional.empty();

    @Mixin
    private WeatherOptions reading;

    @Option(names = "--json", description = "Print the design as JSON, which has no comments.")
    private boolean json;

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        within("--litres", litres, LEAST_LITRES, MOST_LITRES);
        within("--setpoint", setpointC, LEAST_C, MOST_C);
        WeatherText.requireFree(spec, file, replace);
        Weather weather = Inputs.weather(weatherFile, reading.way(), new ArrayList<>());
        String text = StarterText.of(litres, setpointC, weather);
        if (file.isPresent()) {
            WeatherText.free(spec, file.get(), replace).write(isJson(file.get()) ? asJson(text) : text);
        }
        answer(text);
        return ExitCode.DONE.number();
    }

    private static boolean isJson(Path target) {
        return target.toString().endsWith(".json");
    }

    private static String asJson(String text) {
        return DesignDocument.json("starter design", text);
    }

    private void answer(String text) {
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.print(asJson(text));
        } else if (file.isEmpty()) {
            to.print(text);
        } else if (!common.quiet()) {
            to.println("A starter design stands in " + file.get()
                    + (isJson(file.get())
                            ? "; the rules it follows stand in the comments of a YAML one."
                            : "; its comments say by which rules."));
            to.println("Look at it with: warmvat check " + file.get());
        }
        to.flush();
    }

    private void within(String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new ParameterException(
                    spec.commandLine(),
                    String.format(Locale.ROOT, "%s %s, expected %.0f to %.0f", option, value, least, most));
        }
    }
}
