package org.warmvat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.WeatherLook;
import org.warmvat.cli.answer.WeatherPicture;
import org.warmvat.cli.plot.CannotDraw;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.weather.Weather;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code weather look}: what a weather file holds, month by month, and what is suspicious about it. */
@Command(
        name = "look",
        sortOptions = false,
        description = {
            "Says what a weather file holds: site, months, what was assumed, and what is suspicious about it.",
            "Without a file the built-in invented year is looked at."
        })
final class WeatherLookCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "Weather file, hourly.")
    private Optional<Path> file = Optional.empty();

    @Option(names = "--layout", paramLabel = "L", description = "Layout file that says how FILE is laid out.")
    private Optional<Path> layout = Optional.empty();

    @Option(
            names = "--picture",
            paramLabel = "PICTURE",
            description = "Also draw temperature and sun through the year into this .png or .svg file.")
    private Optional<Path> picture = Optional.empty();

    @Option(names = "--json", description = "Print the same as JSON.")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        picture.ifPresent(this::requireEnding);
        Weather weather = Inputs.weather(file, layout, new ArrayList<>());
        PrintWriter to = spec.commandLine().getOut();
        WeatherLook look = WeatherLook.of(weather);
        if (json) {
            to.print(new String(look.json(), StandardCharsets.UTF_8));
        } else {
            lines(look).forEach(to::println);
        }
        to.flush();
        if (picture.isPresent()) {
            draw(weather, picture.get());
        }
        return ExitCode.DONE.number();
    }

    private List<String> lines(WeatherLook look) {
        List<String> lines = new ArrayList<>();
        if (file.isEmpty()) {
            lines.add(Inputs.INVENTED_WEATHER);
        }
        lines.addAll(look.lines());
        return lines;
    }

    private void requireEnding(Path path) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".png") && !name.endsWith(".svg")) {
            throw new ParameterException(
                    spec.commandLine(), "--picture " + path + ", expected a name ending in .png or .svg");
        }
    }

    private void draw(Weather weather, Path path) throws IOException {
        Picture drawn;
        try {
            drawn = Pictures.of(List.of(WeatherPicture.of(weather))).get(0);
        } catch (CannotDraw cannotDraw) {
            spec.commandLine().getErr().println(cannotDraw.getMessage());
            return;
        }
        boolean png = path.toString().toLowerCase(Locale.ROOT).endsWith(".png");
        Files.write(path, png ? drawn.png() : drawn.svg());
    }
}
