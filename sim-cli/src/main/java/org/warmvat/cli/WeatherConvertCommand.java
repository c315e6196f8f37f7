package org.warmvat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.weather.Weather;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.file.WarmvatCsvText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code weather convert}: any hourly text to Warmvat's own file. */
@Command(
        name = "convert",
        sortOptions = false,
        description = {
            "Writes any hourly text that a layout file describes, or a typical year in the open TMY3 layout, as a Warmvat"
                    + " weather file, with gaps filled and faults and suspicions told."
        })
final class WeatherConvertCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FILE", description = "Hourly text.")
    private Path file;

    @Option(names = "--layout", paramLabel = "L", description = "Layout file that says how FILE is laid out.")
    private Optional<Path> layout = Optional.empty();

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the weather (standard output).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        WeatherText.requireFree(spec, out, replace);
        Weather weather = Inputs.weather(Optional.of(file), layout, new ArrayList<>());
        WeatherText.write(spec, out, WarmvatCsvText.of(weather.table(), "converted from " + file.getFileName()));
        if (!common.quiet()) {
            weather.table().notes().forEach(spec.commandLine().getErr()::println);
            Doubts.of(weather).stream()
                    .map(Doubt::sentence)
                    .forEach(spec.commandLine().getErr()::println);
        }
        return ExitCode.DONE.number();
    }
}
