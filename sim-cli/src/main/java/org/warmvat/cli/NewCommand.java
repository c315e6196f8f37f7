package org.warmvat.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.CommonOptions;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.question.starter.Starter;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new}: a commented starter design for a size and a climate. */
@Command(
        name = "new",
        sortOptions = false,
        description = {
            "Writes a starter design whose insulation, collector, coils and heater follow rules of thumb that stand beside them as"
                    + " comments.",
            "Without a file it is printed, and on a terminal its few questions are asked, each with a default. Without weather the"
                    + " climate is that of the built-in invented demonstration."
        })
final class NewCommand implements Callable<Integer> {

    private static final double LEAST_LITRES = 20;
    private static final double MOST_LITRES = 100_000;
    private static final double LEAST_C = 15;
    private static final double MOST_C = 45;
    private static final double MOST_MM = 1000;
    private static final double MOST_M2 = 1000;
    private static final String USUAL_FILE = "mine.yaml";

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

    @Option(
            names = "--place",
            paramLabel = "WORD",
            defaultValue = "sheltered",
            description = "Where it stands: open, sheltered, under_roof or polytunnel (${DEFAULT-VALUE}).")
    private Starter.Standing place;

    @Option(names = "--insulation", paramLabel = "MM", description = "Insulation at hand, mm (by rule of thumb).")
    private Optional<Double> insulationMm = Optional.empty();

    @Option(
            names = "--collector",
            paramLabel = "M2",
            description = "Collector at hand, m2; 0 for none (by rule of thumb).")
    private Optional<Double> collectorM2 = Optional.empty();

    @Option(
            names = "--collector-kind",
            paramLabel = "WORD",
            defaultValue = "flat_plate",
            description = "Its kind: flat_plate or tubes (${DEFAULT-VALUE}).")
    private Starter.CollectorKind collectorKind;

    @Option(
            names = "--source",
            paramLabel = "WORD",
            defaultValue = "electric",
            description = "What heats it when the sun does not: electric, own_gas or fuel (${DEFAULT-VALUE}).")
    private Starter.Source source;

    @Option(
            names = "--season",
            paramLabel = "WORD",
            defaultValue = "all_year",
            description =
                    "When it is fed: all_year, or winter_rest for a rest from mid-November to mid-March (${DEFAULT-VALUE}).")
    private Season season;

    @Mixin
    private WeatherOptions reading;

    /** The terminal on which questions are asked; empty for none. */
    private Optional<BufferedReader> terminal = console();

    @Option(names = "--json", description = "Print the design as JSON, which has no comments.")
    private boolean json;

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    @SuppressWarnings("SystemConsoleNull") // later Java always has a console; then whoever pipes nothing in is told so
    private static Optional<BufferedReader> console() {
        return Optional.ofNullable(System.console()).map(console -> new BufferedReader(console.reader()));
    }

    /** Asks on another terminal than the process's own. */
    void ask(BufferedReader answers) {
        terminal = Optional.of(answers);
    }

    @Override
    public Integer call() throws IOException {
        if (file.isEmpty() && !json && terminal.isPresent()) {
            questions(terminal.get());
        }
        refuseOutOfRange();
        Starter.AtHand atHand = atHand();
        file.ifPresent(target -> common.free(target, replace));
        Weather weather = Inputs.weatherOnly(weatherFile, reading.way()).weather();
        String text = StarterText.of(litres, setpointC, weather, atHand);
        if (file.isPresent()) {
            common.free(file.get(), replace).write(isJson(file.get()) ? asJson(text) : text);
        }
        answer(text);
        return ExitCode.DONE.number();
    }

    private void refuseOutOfRange() {
        common.within("--litres", litres, LEAST_LITRES, MOST_LITRES);
        common.within("--setpoint", setpointC, LEAST_C, MOST_C);
        insulationMm.ifPresent(mm -> common.within("--insulation", mm, 1, MOST_MM));
        collectorM2.ifPresent(m2 -> common.within("--collector", m2, 0, MOST_M2));
    }

    private Starter.AtHand atHand() {
        return new Starter.AtHand(
                place,
                insulationMm.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                collectorM2.map(OptionalDouble::of).orElseGet(OptionalDouble::empty),
                collectorKind,
                source,
                season == Season.WINTER_REST);
    }

    /** When it is fed. */
    enum Season {
        ALL_YEAR,
        WINTER_REST
    }

    /** Asks for what the options say otherwise, and where to write it. */
    private void questions(BufferedReader answers) {
        Questions questions = new Questions(answers, common.spec().commandLine().getOut());
        try {
            litres = questions.number("Litres of slurry", litres, LEAST_LITRES, MOST_LITRES);
            setpointC = questions.number("Temperature to hold, °C", setpointC, LEAST_C, MOST_C);
            String weather = questions.text(
                    "Weather file of the place", weatherFile.map(Path::toString).orElse("an invented year"));
            weatherFile = weather.isEmpty() ? weatherFile : Optional.of(Path.of(weather));
            place = questions.word("Where it stands", Starter.Standing.values(), place);
            insulationMm = boxed(questions.optional("Insulation at hand, mm", 1, MOST_MM))
                    .or(() -> insulationMm);
            collectorM2 = boxed(questions.optional("Collector at hand, m2, 0 for none", 0, MOST_M2))
                    .or(() -> collectorM2);
            if (!collectorM2.equals(Optional.of(0.0))) {
                collectorKind = questions.word("Kind of collector", Starter.CollectorKind.values(), collectorKind);
            }
            source = questions.word("Heat when the sun gives none", Starter.Source.values(), source);
            season = questions.word("When it is fed", Season.values(), season);
            String name = questions.text("File to write", USUAL_FILE);
            file = Optional.of(Path.of(name.isEmpty() ? USUAL_FILE : name));
        } catch (Questions.NoAnswer none) {
            throw common.wrong(none.getMessage());
        }
    }

    private static Optional<Double> boxed(OptionalDouble number) {
        return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    }

    private static boolean isJson(Path target) {
        return target.toString().endsWith(".json");
    }

    private static String asJson(String text) {
        return DesignDocument.json("starter design", text);
    }

    private void answer(String text) {
        if (json) {
            common.print(asJson(text));
        } else if (file.isEmpty()) {
            common.print(text);
        } else if (!common.quiet()) {
            String rules = isJson(file.get())
                    ? "; the rules it follows stand in the comments of a YAML one."
                    : "; its comments say by which rules.";
            common.print(String.format(
                    Locale.ROOT,
                    "A starter design stands in %s%s%nLook at it with: warmvat check %1$s%n",
                    file.get(),
                    rules));
        }
    }
}
