package org.warmvat.cli.weather;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Inputs;
import org.warmvat.cli.option.TextOptions;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.TextFile;
import org.warmvat.weather.service.LayoutProposal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

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

    @Mixin
    private TextOptions options;

    @Parameters(index = "0", paramLabel = "FILE", description = "Hourly text.")
    private Path file;

    @Override
    public Integer call() throws IOException {
        options.requireFree();
        byte[] bytes = Inputs.bytes(file);
        String name = file.getFileName().toString();
        try {
            boolean latin1 = !TextFile.isUtf8(bytes);
            Optional<String> proposal = LayoutProposal.of(TextFile.decode(name, bytes, latin1), latin1);
            options.write(proposal.orElseThrow(() -> new InputRefused(name
                    + ": nothing in its first lines looks like rows of a time and numbers, expected hourly text")));
        } catch (WeatherRefused refused) {
            throw new InputRefused(refused.faults());
        }
        return ExitCode.DONE.number();
    }
}
