package org.warmvat.cli.weather;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.warmvat.cli.answer.folder.ResultsRefused;
import org.warmvat.cli.answer.folder.WholeFile;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Where text goes that a command makes: a file that appears whole, or standard output. */
public final class WeatherText {

    private WeatherText() {}

    /** Refuses a place that is taken and not to be replaced, before any work. */
    public static void requireFree(CommandSpec spec, Optional<Path> out, boolean replace) {
        out.ifPresent(place -> free(spec, place, replace));
    }

    /** The file to write, where its place is free or may be replaced. */
    public static WholeFile free(CommandSpec spec, Path place, boolean replace) {
        try {
            return WholeFile.at(place, replace);
        } catch (ResultsRefused refused) {
            throw new ParameterException(spec.commandLine(), refused.getMessage(), refused);
        }
    }

    static void write(CommandSpec spec, Optional<Path> out, String text) throws IOException {
        if (out.isPresent()) {
            free(spec, out.get(), true).write(text);
        } else {
            PrintWriter to = spec.commandLine().getOut();
            to.print(text);
            to.flush();
        }
    }
}
