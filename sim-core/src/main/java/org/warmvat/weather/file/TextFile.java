package org.warmvat.weather.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.warmvat.weather.WeatherRefused;

/** The text of a UTF-8 file, with or without a byte-order mark; anything else is refused with the place. */
public final class TextFile {
    /** More than any century of hourly rows; a larger file is not weather and would only fill the memory. */
    private static final long MOST_BYTES = 256L << 20;

    private static final char REPLACEMENT = '\uFFFD';

    private TextFile() {}

    static String read(Path path) throws WeatherRefused, IOException {
        String file = path.getFileName().toString();
        if (Files.isDirectory(path)) {
            throw new WeatherRefused(file + ": is a folder, expected a file");
        }
        if (Files.size(path) > MOST_BYTES) {
            throw new WeatherRefused(
                    file + ": " + (Files.size(path) >> 20) + " MB, expected at most 256 MB of hourly rows");
        }
        return decode(file, Files.readAllBytes(path));
    }

    /** The text of a file's bytes. */
    public static String decode(String file, byte[] bytes) throws WeatherRefused {
        if (bytes.length == 0) {
            throw new WeatherRefused(file + ": is empty");
        }
        refuseUtf16(file, bytes);
        int skip = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        String text = new String(bytes, skip, bytes.length - skip, StandardCharsets.UTF_8);
        // Broken bytes become this mark, which a whole text may hold too; the strict way then tells them apart, but
        // takes longer.
        if (text.indexOf(REPLACEMENT) >= 0) {
            refuseBroken(file, bytes, skip);
        }
        return text;
    }

    private static void refuseBroken(String file, byte[] bytes, int skip) throws WeatherRefused {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CoderResult end = decoder.decode(in, CharBuffer.allocate(bytes.length - skip), true);
        if (end.isError()) {
            throw new WeatherRefused(file + " " + place(bytes, in.position())
                    + ": not UTF-8 text (an older 8-bit encoding?), expected UTF-8");
        }
    }

    private static void refuseUtf16(String file, byte[] bytes) throws WeatherRefused {
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            throw new WeatherRefused(file + ": is UTF-16 text, expected UTF-8");
        }
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw new WeatherRefused(file + " " + place(bytes, i)
                        + ": a zero byte (UTF-16 text, a spreadsheet or an archive?), expected UTF-8 text");
            }
        }
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        if (bytes.length < head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }

    private static String place(byte[] bytes, int at) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < at; i++) {
            column++;
            if (bytes[i] == '\n') {
                line++;
                column = 1;
            }
        }
        return "line " + line + " byte " + column;
    }
}
