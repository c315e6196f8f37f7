package org.warmvat.cli.option;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options of commands that make a text: a file that appears whole, or standard output. */
public final class TextOptions extends CommonOptions {

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write it (standard output).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--replace", description = "Replace a file that stands there already.")
    private boolean replace;

    /** Refuses a place that is taken and not to be replaced, before any work. */
    public void requireFree() {
        out.ifPresent(place -> free(place, replace));
    }

    /** Writes the text. */
    public void write(String text) throws IOException {
        if (out.isPresent()) {
            free(out.get(), true).write(text);
        } else {
            print(text);
        }
    }
}
