package org.warmvat.cli.weather;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.folder.WholeFile;
import org.warmvat.cli.answer.look.LookAnswer;
import org.warmvat.cli.option.AnswerOptions;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.WeatherOptions;
import org.warmvat.cli.plot.Picture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code weather look}: what a weather file holds, month by month, and what is suspicious about it. */
@Command(
        name = "look",
        sortOptions = false,
        description = {
            "Says what a weather file holds: site, months, what was assumed, and what is suspicious about it.",
            "Without a file the built-in invented year is looked at."
        })
final class WeatherLookCommand implements Answering, Callable<Integer> {

    @Mixin
    private AnswerOptions options;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "Weather file, hourly.")
    private Optional<Path> file = Optional.empty();

    @Mixin
    private WeatherOptions reading;

    @Option(
            names = "--picture",
            paramLabel = "PICTURE",
            description = "Also draw temperature and sun through the year into this .png or .svg file.")
    private Optional<Path> picture = Optional.empty();

    @Override
    public Integer call() throws Exception {
        picture.ifPresent(this::requireEnding);
        Optional<WholeFile> free = picture.map(place -> options.free(place, options.replace()));
        return options.answer(() -> {
            Document document = document();
            if (free.isPresent()) {
                draw(document.body().pictures(), free.get());
            }
            return document;
        });
    }

    @Override
    public Document document() {
        return LookAnswer.of(
                Inputs.weatherOnly(file, reading.way()).asked("weather look", ""),
                picture.isPresent() || options.place().isPresent());
    }

    private void requireEnding(Path path) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".png") && !name.endsWith(".svg")) {
            throw options.wrong("--picture " + path + ", expected a name ending in .png or .svg");
        }
    }

    /** Draws it, where this machine can draw. */
    private void draw(List<Picture> drawn, WholeFile place) throws IOException {
        boolean png = picture.orElseThrow().toString().toLowerCase(Locale.ROOT).endsWith(".png");
        for (Picture one : drawn) {
            place.write(png ? one.png() : one.svg());
        }
    }
}
