package org.warmvat.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.warmvat.weather.WeatherYear;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The design and the weather of one or several years, in one or several files. */
final class YearsArguments {

    @Parameters(index = "0", arity = "0..1", paramLabel = "DESIGN", description = "Design file, YAML or JSON.")
    private Optional<Path> designFile = Optional.empty();

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "WEATHER",
            description = "Weather files, hourly; one of several years is cut into them.")
    private List<Path> weatherFiles = List.of();

    @Mixin
    private WeatherOptions weather;

    /**
     * Reads both.
     *
     * @throws org.warmvat.cli.file.InputRefused with the faults of all files
     */
    Inputs read() {
        return Inputs.read(designFile, weatherFiles, weather.way(), design -> {});
    }

    /** The years of the files that were read, each named by its file, by its year too where the file holds several. */
    List<WeatherYear> years(Inputs inputs) {
        List<String> names = new ArrayList<>();
        List<WeatherYear> years = new ArrayList<>();
        for (int i = 0; i < inputs.weathers().size(); i++) {
            String name = weatherFiles.isEmpty()
                    ? "built-in demonstration"
                    : weatherFiles.get(i).getFileName().toString();
            long before = names.stream().filter(name::equals).count();
            names.add(name);
            years.addAll(WeatherYear.of(
                    before == 0 ? name : name + " (" + (before + 1) + ")",
                    inputs.weathers().get(i)));
        }
        return years;
    }
}
