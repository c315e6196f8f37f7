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
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.service.Recognised;

/** The text of a UTF-8 file, with or without a byte-order mark; anything else is refused with the place. */
public final class TextFile {
    /** More than any century of hourly rows; a larger file is not weather and would only fill the memory. */
    private static final long MOST_BYTES = 256L << 20;
    /** Memory that the rows, columns and sun of a file take, in sizes of the file: 7.5 to read, the rest to run it. */
    private static final int SIZES_OF_MEMORY = 12;

    private static final double MB = 1 << 20;
    private static final int MOST_LEAD = 200;

    private static final char REPLACEMENT = '\uFFFD';

    private TextFile() {}

    static String read(Path path) throws WeatherRefused, IOException {
        String file = path.getFileName().toString();
        if (Files.isDirectory(path)) {
            throw new WeatherRefused(file + ": is a folder, expected a file");
        }
        refuseLarge(file, Files.size(path));
        return decode(file, Files.readAllBytes(path));
    }

    /** Refuses a file that would not fit into the memory, before it is read. */
    public static void refuseLarge(String file, long bytes) throws WeatherRefused {
        long memory = Runtime.getRuntime().maxMemory();
        long most = Math.min(MOST_BYTES, memory / SIZES_OF_MEMORY);
        if (bytes > most) {
            throw new WeatherRefused(String.format(
                            Locale.ROOT, "%s: %.1f MB, expected at most %.1f MB of rows", file, bytes / MB, most / MB)
                    + (most < MOST_BYTES ? " in a memory of " + (memory >> 20) + " MB (java -Xmx4g gives more)" : ""));
        }
    }

    /** Whether bytes are text in UTF-8, as far as can be seen; other 8-bit encodings hardly ever are. */
    public static boolean isUtf8(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return text.indexOf(REPLACEMENT) < 0 || Arrays.equals(text.getBytes(StandardCharsets.UTF_8), bytes);
    }

    /** The text of a file's bytes, UTF-8 or Latin-1. */
    public static String decode(String file, byte[] bytes, boolean latin1) throws WeatherRefused {
        if (!latin1) {
            return decode(file, bytes);
        }
        refuseOthers(file, bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** The text of a file's bytes. */
    public static String decode(String file, byte[] bytes) throws WeatherRefused {
        refuseOthers(file, bytes);
        int skip = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        String text = new String(bytes, skip, bytes.length - skip, StandardCharsets.UTF_8);
        // Broken bytes become this mark, which a whole text may hold too; the strict way then tells them apart, but
        // takes longer.
        int broken = text.indexOf(REPLACEMENT) < 0 ? bytes.length : brokenAt(bytes, skip);
        if (broken < bytes.length) {
            String older = latin1(bytes);
            // a letter of an older encoding in a name does not keep a known file from being read
            if (Recognised.in(older).isPresent()) {
                return older;
            }
            throw new WeatherRefused(file + " " + place(bytes, broken)
                    + ": not UTF-8 text (an older 8-bit encoding?), expected UTF-8. " + Unrecognised.saved(older));
        }
        return text.indexOf('\r') >= 0 && text.indexOf('\n') < 0 ? text.replace('\r', '\n') : text;
    }

    private static String latin1(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** Where the bytes cease to be UTF-8; their end where they are to the end. */
    private static int brokenAt(byte[] bytes, int skip) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CoderResult end = decoder.decode(in, CharBuffer.allocate(bytes.length - skip), true);
        return end.isError() ? in.position() : bytes.length;
    }

    private static void refuseOthers(String file, byte[] bytes) throws WeatherRefused {
        if (bytes.length == 0) {
            throw new WeatherRefused(file + ": is empty");
        }
        if (startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new WeatherRefused(file + ": is " + packed(bytes));
        }
        Optional<String> other = other(bytes);
        if (other.isPresent()) {
            throw new WeatherRefused(file + ": is " + other.get() + ", expected rows of text (CSV)");
        }
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

    /** What is not rows at all, though a download may end in it. */
    private static Optional<String> other(byte[] bytes) {
        if (startsWith(bytes, 0x1F, 0x8B)) {
            return Optional.of("packed by gzip: unpack it");
        }
        if (startsWith(bytes, '%', 'P', 'D', 'F')) {
            return Optional.of("a PDF document");
        }
        if (startsWith(bytes, 0x89, 'P', 'N', 'G') || startsWith(bytes, 0xFF, 0xD8, 0xFF)) {
            return Optional.of("a picture");
        }
        String head = latin1(Arrays.copyOf(bytes, Math.min(bytes.length, MOST_LEAD)))
                .strip()
                .toLowerCase(Locale.ROOT);
        if (head.startsWith("<!doctype html") || head.startsWith("<html")) {
            return Optional.of(
                    "a web page, perhaps one on which the service says what it missed: open it in a browser");
        }
        boolean json = head.startsWith("{\"") || head.startsWith("[{");
        return json ? Optional.of("JSON: ask the service for CSV") : Optional.empty();
    }

    /** What a packed file is, and what to do. */
    private static String packed(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, 4096), StandardCharsets.ISO_8859_1);
        boolean open = head.contains("opendocument.spreadsheet");
        boolean workbook = head.contains("[Content_Types].xml") || head.contains("xl/") || bytes[0] != 'P';
        if (!open && !workbook) {
            return "a packed archive, expected the text file that is in it";
        }
        return "a spreadsheet's workbook (" + (open ? ".ods" : bytes[0] == 'P' ? ".xlsx" : ".xls")
                + "), expected text: open it in the spreadsheet program, choose the sheet with the hours, save it as CSV (comma separated,"
                + " UTF-8), and have a layout for that proposed by \"warmvat weather layout FILE.csv\"";
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        return bytes.length >= head.length
                && IntStream.range(0, head.length).allMatch(i -> (bytes[i] & 0xFF) == head[i]);
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
