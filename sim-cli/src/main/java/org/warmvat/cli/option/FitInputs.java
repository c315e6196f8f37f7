package org.warmvat.cli.option;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.file.LogLayoutDocument;
import org.warmvat.log.Log;
import org.warmvat.log.LogFiles;
import org.warmvat.log.LogLayout;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.WeatherYear;

/**
 * What {@code fit} is given. A log belongs to a tank that is there: nothing stands in for what is not given.
 *
 * @param all design and weather, with hashes of every file
 * @param log the log
 * @param designText the design file as it stands
 */
public record FitInputs(Inputs all, Log log, String designText) {

    /**
     * Files of the command line.
     *
     * @param design the design
     * @param logs the log's files
     * @param weathers the weather
     */
    public record Named(Path design, List<Path> logs, List<Path> weathers) {}

    /**
     * Reads all.
     *
     * @throws InputRefused with the faults of all files
     */
    public static FitInputs read(
            Named named, WeatherOptions.Way way, Optional<Path> logLayout, Optional<String> sensor) {
        List<String> faults = new ArrayList<>();
        List<InputFile> files = new ArrayList<>();
        byte[] designBytes = Inputs.bytes(named.design());
        Optional<DesignDocument> design = Inputs.tried(() -> Inputs.design(Optional.of(named.design()), files), faults);
        Optional<Log> log = Inputs.tried(() -> log(named.logs(), logLayout, sensor, files), faults);
        List<WeatherYear> weathers =
                !named.weathers().isEmpty() || way.layoutFile().isPresent()
                        ? Inputs.weathers(named.weathers(), way, files, faults)
                        : List.of();
        if (!faults.isEmpty()) {
            throw new InputRefused(faults);
        }
        return new FitInputs(
                new Inputs(design, weathers, files, List.of()),
                log.orElseThrow(),
                new String(designBytes, StandardCharsets.UTF_8));
    }

    private static Log log(
            List<Path> paths, Optional<Path> layoutFile, Optional<String> sensor, List<InputFile> files) {
        Optional<LogLayout> layout = layoutFile.map(file -> {
            files.add(InputFile.of("log_layout", file.getFileName().toString(), Inputs.bytes(file)));
            return LogLayoutDocument.read(file);
        });
        try {
            List<LogFiles.Source> sources = new ArrayList<>();
            for (Path path : paths) {
                byte[] bytes = Inputs.bytes(path);
                files.add(InputFile.of("log", path.getFileName().toString(), bytes));
                sources.add(LogFiles.Source.of(path.toString(), bytes));
            }
            return LogFiles.read(sources, layout, sensor);
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }
}
