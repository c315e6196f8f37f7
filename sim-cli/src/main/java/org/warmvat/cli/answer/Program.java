package org.warmvat.cli.answer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The program's version, as the build wrote it beside this class. */
public final class Program {

    private static final String VERSION = read();

    private Program() {}

    /** The bare version, such as {@code 1.2.0}. */
    public static String version() {
        return VERSION;
    }

    private static String read() {
        try (InputStream in = Program.class.getResourceAsStream("/org/warmvat/cli/version.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
