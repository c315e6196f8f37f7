package org.warmvat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it beside this class. */
public final class ProgramVersion implements IVersionProvider {

    /** The bare version, such as {@code 1.2.0}. */
    public static String text() {
        try (InputStream in = ProgramVersion.class.getResourceAsStream("version.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String[] getVersion() {
        return new String[] {"warmvat " + text()};
    }
}
