package org.warmvat.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.IntStream;

/** Reads the text of a small file and refuses what is not UTF-8 text. */
final class SourceText {

    /** Largest design file, bytes: far more than any design needs. */
    static final int LARGEST_BYTES = 1_000_000;

    private SourceText() {}

    /** Decodes UTF-8, leaving out a byte order mark. */
    static String decode(String name, byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            throw refused(name, bytes.length + " bytes, expected up to " + LARGEST_BYTES);
        }
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            throw refused(name, "is UTF-16 text, expected UTF-8");
        }
        ByteBuffer in = ByteBuffer.wrap(bytes);
        in.position(startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0);
        try {
            // a new decoder reports what it cannot read
            String text = StandardCharsets.UTF_8.newDecoder().decode(in).toString();
            if (text.isBlank()) {
                throw refused(name, "is empty, expected a design");
            }
            return text;
        } catch (CharacterCodingException e) {
            throw notUtf8(name, bytes, in.position());
        }
    }

    /** A reporting decoder leaves the buffer before the byte it could not read. */
    private static InputRefused notUtf8(String name, byte[] bytes, int at) {
        long line = 1 + IntStream.range(0, at).filter(i -> bytes[i] == '\n').count();
        return new InputRefused(
                String.format(Locale.ROOT, "%s line %d: byte 0x%02X, expected UTF-8 text", name, line, bytes[at]));
    }

    private static InputRefused refused(String name, String fact) {
        return new InputRefused(name + ": " + fact);
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        return bytes.length >= start.length
                && IntStream.range(0, start.length).allMatch(i -> (bytes[i] & 0xFF) == start[i]);
    }

    /** A text that is shipped with the program. */
    static String shipped(String resource) {
        try (InputStream in = SourceText.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
