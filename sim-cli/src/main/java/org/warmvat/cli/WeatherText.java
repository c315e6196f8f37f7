package org.warmvat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Where a made or converted weather file goes: a file that appears whole, or standard output. */
final class WeatherText {

    private WeatherText() {}

    static void requireFree(CommandSpec spec, Optional<Path> out, boolean replace) {
        if (out.isPresent() && !Files.isDirectory(out.get().toAbsolutePath().getParent())) {
            throw new ParameterException(
                    spec.commandLine(),
                    out.get() + ": there is no folder " + out.get().getParent() + " to write it to");
        }
        if (out.isPresent() && Files.exists(out.get()) && (!replace || Files.isDirectory(out.get()))) {
            String fact =
                    Files.isDirectory(out.get()) ? "is a folder, expected a file" : "stands there already (--replace)";
            throw new ParameterException(spec.commandLine(), out.get() + ": " + fact);
        }
    }

    static void write(CommandSpec spec, Optional<Path> out, String text) throws IOException {
        if (out.isEmpty()) {
            PrintWriter to = spec.commandLine().getOut();
            to.print(text);
            to.flush();
            return;
        }
        Path whole = out.get().toAbsolutePath();
        Path part = Files.createTempFile(whole.getParent(), whole.getFileName().toString(), ".part");
        try {
            Files.write(part, text.getBytes(StandardCharsets.UTF_8));
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
