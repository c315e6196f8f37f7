package org.warmvat.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

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
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            in.position(3);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString();
            if (text.isBlank()) {
                throw refused(name, "is empty, expected a design");
            }
            return text;
        } catch (CharacterCodingException e) {
            // a reporting decoder leaves the buffer before the byte it could not read
            throw new InputRefused(List.of(String.format(
                    Locale.ROOT,
                    "%s line %d: byte 0x%02X, expected UTF-8 text",
                    name,
                    line(bytes, in.position()),
                    bytes[in.position()])));
        }
    }

    private static InputRefused refused(String name, String fact) {
        return new InputRefused(List.of(name + ": " + fact));
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        if (bytes.length < start.length) {
            return false;
        }
        for (int i = 0; i < start.length; i++) {
            if ((bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static int line(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
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
