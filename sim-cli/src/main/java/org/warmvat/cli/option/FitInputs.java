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
        Optional<LogLayout> layout = logLayout.flatMap(file -> Inputs.tried(() -> layout(file, files), faults));
        List<LogFiles.Source> sources = new ArrayList<>();
        named.logs().forEach(path -> Inputs.tried(() -> sources.add(source(path, files)), faults));
        // without its layout or a file of it nothing is known of a log
        boolean whole = layout.isPresent() == logLayout.isPresent()
                && sources.size() == named.logs().size();
        Optional<Log> log = whole ? Inputs.tried(() -> log(sources, layout, sensor), faults) : Optional.empty();
        List<WeatherYear> weathers =
                !named.weathers().isEmpty() || way.layoutFile().isPresent()
                        ? Inputs.weathers(named.weathers(), way, files, faults)
                        : List.of();
        InputRefused.ifAny(faults);
        return new FitInputs(
                new Inputs(design, weathers, files, List.of()),
                log.orElseThrow(),
                new String(designBytes, StandardCharsets.UTF_8));
    }

    private static LogLayout layout(Path file, List<InputFile> files) {
        byte[] bytes = Inputs.bytes(file);
        files.add(InputFile.of("log_layout", file.getFileName().toString(), bytes));
        return LogLayoutDocument.read(file.toString(), bytes);
    }

    private static LogFiles.Source source(Path path, List<InputFile> files) {
        byte[] bytes = Inputs.bytes(path);
        files.add(InputFile.of("log", path.getFileName().toString(), bytes));
        try {
            return LogFiles.Source.of(path.toString(), bytes);
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }

    private static Log log(List<LogFiles.Source> sources, Optional<LogLayout> layout, Optional<String> sensor) {
        try {
            return LogFiles.read(sources, layout, sensor);
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }
}
