package org.warmvat.image;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.warmvat.cli.Warmvat;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes what a terminal offers beside {@code --help}: pages of the manual, as AsciiDoc, and completion for bash. Build only. */
public final class Manual {

    private Manual() {}

    /**
     * Writes them.
     *
     * @param args folder of the pages, file of the completion
     */
    public static void main(String... args) throws IOException {
        Path pages = Files.createDirectories(Path.of(args[0]));
        CommandLine line = Warmvat.commandLine();
        int code = ManPageGenerator.generateManPage(pages.toFile(), null, new boolean[0], false, line.getCommandSpec());
        if (code != CommandLine.ExitCode.OK) {
            throw new IOException("the pages were not written");
        }
        Path completion = Path.of(args[1]);
        Files.createDirectories(completion.getParent());
        Files.writeString(completion, AutoComplete.bash("warmvat", line), StandardCharsets.UTF_8);
    }
}
