package org.warmvat.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.cli.input.DesignDocument;
import org.warmvat.cli.input.InputRefused;
import org.warmvat.cli.input.LayoutDocument;
import org.warmvat.cli.report.Asked;
import org.warmvat.cli.report.InputFile;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherFiles;
import org.warmvat.weather.WeatherRefused;

/**
 * Design and weather of a command, each from its file or from the built-in demonstration.
 *
 * @param design the design
 * @param weather the weather
 * @param files what they were read from, hashed
 * @param invented one sentence for each that is the built-in demonstration
 */
record Inputs(DesignDocument design, Weather weather, List<InputFile> files, List<String> invented) {

    private static final String DEMONSTRATION = "built-in demonstration";
    private static final long MOST_BYTES = 256L << 20;
    static final String INVENTED_DESIGN = "No design was given: this is the built-in demonstration, an invented tank.";
    static final String INVENTED_WEATHER =
            "No weather was given: this is the built-in demonstration, an invented year.";

    /**
     * Reads both, the weather by a layout file where one is given.
     *
     * @throws InputRefused with the faults of all files
     */
    static Inputs read(Optional<Path> designFile, Optional<Path> weatherFile, Optional<Path> layoutFile) {
        List<String> faults = new ArrayList<>();
        List<InputFile> files = new ArrayList<>();
        Optional<DesignDocument> design = tried(() -> design(designFile, files), faults);
        Optional<Weather> weather = tried(() -> weather(weatherFile, layoutFile, files), faults);
        if (!faults.isEmpty()) {
            throw new InputRefused(faults);
        }
        List<String> invented = new ArrayList<>();
        if (designFile.isEmpty()) {
            invented.add(INVENTED_DESIGN);
        }
        if (weatherFile.isEmpty()) {
            invented.add(INVENTED_WEATHER);
        }
        return new Inputs(design.orElseThrow(), weather.orElseThrow(), files, invented);
    }

    /** What a study is asked about. */
    Asked asked(String engine) {
        return asked(engine, List.of(weather));
    }

    /** The same over several weather files. */
    Asked asked(String engine, List<Weather> weathers) {
        List<String> assumed = new ArrayList<>(invented);
        assumed.addAll(design.assumed());
        weathers.forEach(one -> assumed.addAll(one.assumptions()));
        return new Asked(design.design(), weathers, engine, assumed, design.cautions());
    }

    /** Reads a design. */
    static DesignDocument design(Optional<Path> file, List<InputFile> files) {
        byte[] bytes = file.map(Inputs::bytes).orElseGet(DesignDocument::demonstrationBytes);
        files.add(InputFile.of("design", name(file), bytes));
        return DesignDocument.read(file.map(Path::toString).orElse(DEMONSTRATION), bytes);
    }

    /** Reads weather. */
    static Weather weather(Optional<Path> file, List<InputFile> files) {
        return weather(file, Optional.empty(), files);
    }

    /** Reads weather, by a layout file where one is given. */
    static Weather weather(Optional<Path> file, Optional<Path> layoutFile, List<InputFile> files) {
        if (layoutFile.isPresent() && file.isEmpty()) {
            throw new InputRefused(
                    List.of(layoutFile.get() + ": a layout was given but no weather file, expected both"));
        }
        byte[] bytes = file.map(Inputs::bytes).orElseGet(WeatherFiles::demonstrationBytes);
        files.add(InputFile.of("weather", name(file), bytes));
        String shown = file.map(Path::toString).orElse(DEMONSTRATION);
        try {
            if (layoutFile.isEmpty()) {
                return WeatherFiles.read(shown, bytes);
            }
            files.add(InputFile.of("layout", name(layoutFile), bytes(layoutFile.get())));
            return WeatherFiles.read(shown, bytes, LayoutDocument.read(layoutFile.get()));
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
    }

    private static String name(Optional<Path> file) {
        return file.map(path -> path.getFileName().toString()).orElse(DEMONSTRATION);
    }

    private interface Reading<T> {
        T read();
    }

    private static <T> Optional<T> tried(Reading<T> reading, List<String> faults) {
        try {
            return Optional.of(reading.read());
        } catch (InputRefused refused) {
            faults.addAll(refused.faults());
            return Optional.empty();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new InputRefused(List.of(file + ": is a folder, expected a file"));
            }
            if (Files.size(file) > MOST_BYTES) {
                throw new InputRefused(List.of(file + ": larger than 256 MB, expected an input file"));
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException missing) {
            throw new InputRefused(List.of(file + ": no such file"));
        } catch (IOException unreadable) {
            throw new InputRefused(List.of(file + ": cannot be read (" + unreadable.getMessage() + ")"));
        }
    }
}
