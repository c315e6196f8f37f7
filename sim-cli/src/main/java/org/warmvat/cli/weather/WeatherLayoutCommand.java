package org.warmvat.cli.weather;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.option.CommonOptions;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Inputs;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.TextFile;
import org.warmvat.weather.service.LayoutProposal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code weather layout}: proposes a layout for a file. */
@Command(
        name = "layout",
        sortOptions = false,
        description = {
            "Proposes a layout file for an hourly text from its first lines: how its cells are parted, how its times are written, which"
                    + " column is which. Confirm each line, fill in the site, and give it with --layout.",
            "For a file that is recognised anyway it writes the layout by which that is read."
        })
final class WeatherLayoutCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // its options are read by the argument parser
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FILE", description = "Hourly text.")
    private Path file;

    @Option(names = "--out", paramLabel = "LAYOUT", description = "Where to write the layout (standard output).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    @Override
    public Integer call() throws IOException {
        WeatherText.requireFree(spec, out, replace);
        byte[] bytes = Inputs.bytes(file);
        String name = file.getFileName().toString();
        try {
            boolean latin1 = !TextFile.isUtf8(bytes);
            Optional<String> proposal = LayoutProposal.of(TextFile.decode(name, bytes, latin1), latin1);
            WeatherText.write(
                    spec,
                    out,
                    proposal.orElseThrow(
                            () -> new InputRefused(
                                    List.of(
                                            name
                                                    + ": nothing in its first lines looks like rows of a time and numbers, expected hourly text"))));
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
        return ExitCode.DONE.number();
    }
}
