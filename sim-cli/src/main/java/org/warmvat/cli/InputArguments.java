package org.warmvat.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.warmvat.cli.file.DesignDocument;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The design and the weather that most commands are asked about. */
final class InputArguments {

    @Parameters(index = "0", arity = "0..1", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Optional<Path> designFile = Optional.empty();

    @Parameters(index = "1", arity = "0..1", paramLabel = "WEATHER", description = "Weather file, hourly.")
    private Optional<Path> weatherFile = Optional.empty();

    @Mixin
    private WeatherOptions weather;

    boolean hasWeather() {
        return weatherFile.isPresent();
    }

    /**
     * Reads both.
     *
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files
     */
    Inputs read() {
        return read(design -> {});
    }

    /**
     * Reads both.
     *
     * @param check what else is asked of the design
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files and of the check
     */
    Inputs read(Consumer<DesignDocument> check) {
        return Inputs.read(designFile, weatherFile.stream().toList(), weather.way(), check);
    }

    /**
     * Reads the design alone.
     *
     * @throws org.warmvat.cli.file.InputRefused with its faults
     */
    Inputs readDesign() {
        return Inputs.designOnly(designFile);
    }
}
