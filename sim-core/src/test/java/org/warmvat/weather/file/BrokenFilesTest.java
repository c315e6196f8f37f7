package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** Files as they come out of broken disks, other encodings and spreadsheets: a message with the place, or a right run. */
class BrokenFilesTest {
    @TempDir
    Path folder;

    private static String good() {
        return Text.hours("air_c,global_w_m2,wind_m_s", 72, i -> "4.5,0,3");
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("year.csv"), bytes);
    }

    private List<String> faults(byte[] bytes) throws IOException {
        Path path = file(bytes);
        return assertThrows(WeatherRefused.class, () -> WeatherFiles.read(path)).faults();
    }

    private static byte[] bytes(String text, Charset charset) {
        return text.getBytes(charset);
    }

    @Test
    void utf8WithOrWithoutAByteOrderMarkAndWithWindowsLineEnds() throws Exception {
        String umlaut = good().replace("Thornacre", "Dörnäcker");
        for (String text : List.of(umlaut, "\uFEFF" + umlaut, umlaut.replace("\n", "\r\n"))) {
            Weather weather = WeatherFiles.read(file(bytes(text, StandardCharsets.UTF_8)));
            assertEquals("Dörnäcker (invented)", weather.site().name());
            assertEquals(72, weather.hours());
        }
    }

    @Test
    void otherEncodingsAreNamed() throws IOException {
        String umlaut = good().replace("Thornacre", "Dörnäcker");
        assertEquals(
                List.of(
                        "year.csv line 2 byte 10: not UTF-8 text (an older 8-bit encoding?), expected UTF-8. Save it as CSV in UTF-8, or"
                                + " say text.encoding: latin-1 in a layout: \"warmvat weather layout FILE\" proposes a layout for it, to be"
                                + " confirmed and then given by --layout"),
                faults(bytes(umlaut, StandardCharsets.ISO_8859_1)));
        assertEquals(
                List.of("year.csv: is UTF-16 text, expected UTF-8"), faults(bytes(umlaut, StandardCharsets.UTF_16)));
        assertEquals(
                List.of(
                        "year.csv line 1 byte 2: a zero byte (UTF-16 text, a spreadsheet or an archive?), expected UTF-8"
                                + " text"),
                faults(bytes(umlaut, StandardCharsets.UTF_16LE)));
    }

    @Test
    void emptyFolderAbsentAndForeign() throws IOException {
        assertEquals(List.of("year.csv: is empty"), faults(new byte[0]));
        assertThrows(NoSuchFileException.class, () -> WeatherFiles.read(folder.resolve("none.csv")));
        Path name = folder.getFileName();
        assertEquals(
                List.of(name + ": is a folder, expected a file"),
                assertThrows(WeatherRefused.class, () -> WeatherFiles.read(folder))
                        .faults());
        assertEquals(
                List.of(
                        "year.csv: is neither a Warmvat weather file (first line \"# warmvat weather 1\") nor recognised as one of"
                                + " TMY3, PVGIS typical year, PVGIS hourly series, NSRDB, NASA POWER hourly, TMY2. Any other"
                                + " hourly text is read by a layout: \"warmvat weather layout FILE\" proposes a layout for it, to be"
                                + " confirmed and then given by --layout"),
                faults(bytes("a;b;c\n1;2;3\n", StandardCharsets.UTF_8)));
    }

    /** A sparse file, so that nothing is really written. */
    @Test
    void hugeFilesAreNotRead() throws IOException {
        Path path = folder.resolve("huge.csv");
        try (RandomAccessFile huge = new RandomAccessFile(path.toFile(), "rw")) {
            huge.setLength(300L << 20);
        }
        String said = assertThrows(WeatherRefused.class, () -> WeatherFiles.read(path))
                .getMessage();
        assertTrue(said.matches("huge.csv: 300.0 MB, expected at most \\d+\\.\\d MB of rows.*"), said);
        double most = Math.min(256, Runtime.getRuntime().maxMemory() / (double) (1 << 20) / 12);
        assertTrue(said.contains(String.format(Locale.ROOT, "at most %.1f MB", most)), said);
    }

    /** Cut anywhere: either a shorter run of hours, or a message; never anything else. */
    @Test
    void truncatedAnywhere() throws IOException {
        byte[] whole = bytes(good(), StandardCharsets.UTF_8);
        int refused = 0;
        for (int length = 1; length < whole.length; length += 23) {
            try {
                Weather weather = WeatherFiles.read(file(Arrays.copyOf(whole, length)));
                assertTrue(weather.hours() <= 72);
                assertEquals(4.5, weather.airC().value(0), 0.5);
            } catch (WeatherRefused e) {
                assertTrue(e.faults().get(0).startsWith("year.csv"), e.getMessage());
                refused++;
            }
        }
        assertTrue(refused > 10, "only " + refused + " refused");
    }

    @Test
    void shuffledAndDoubledRows() throws IOException {
        List<String> lines = new ArrayList<>(good().lines().toList());
        List<String> rows = new ArrayList<>(lines.subList(Text.LEAD_LINES, lines.size()));
        Collections.shuffle(rows, new Random(4));
        String lead = String.join("\n", lines.subList(0, Text.LEAD_LINES)) + "\n";
        List<String> shuffled = faults(bytes(lead + String.join("\n", rows), StandardCharsets.UTF_8));
        assertTrue(shuffled.get(0).startsWith("year.csv line 10: time 2025-01-0"), shuffled.get(0));
        String doubled = good() + String.join("\n", lines.subList(Text.LEAD_LINES, lines.size()));
        assertEquals(
                "year.csv line 81: time 2025-01-01T01:00 does not follow the row before, expected an hour after"
                        + " 2025-01-04T00:00",
                faults(bytes(doubled, StandardCharsets.UTF_8)).get(0));
    }

    /** What spreadsheets do: commas behind the header lines (read), semicolons and decimal commas (refused). */
    @Test
    void mangledByASpreadsheet() throws Exception {
        StringBuilder commas = new StringBuilder();
        good().lines()
                .forEach(line -> commas.append(line.startsWith("#") ? line + ",,," : line)
                        .append("\r\n"));
        assertEquals(
                72,
                WeatherFiles.read(file(bytes(commas.toString(), StandardCharsets.UTF_8)))
                        .hours());
        String semicolons = good().replace(',', ';').replaceAll("(?<=\\d)\\.(?=\\d)", ",");
        assertEquals(
                List.of(
                        "year.csv line 8: semicolons between the names, expected commas, and points in the numbers (as a"
                                + " spreadsheet saves it under English settings)"),
                faults(bytes(semicolons, StandardCharsets.UTF_8)));
        String dates = good().replace("2025-01-01T", "01.01.2025 ");
        assertEquals(
                "year.csv line 9: time \"01.01.2025 01:00\", expected a date and time like 2025-01-31T14:00 (local standard"
                        + " time)",
                faults(bytes(dates, StandardCharsets.UTF_8)).get(0));
        assertEquals(2, faults(bytes(dates, StandardCharsets.UTF_8)).size());
    }

    /** Bytes overwritten at random places: whatever happens is a refusal or a run. */
    @Test
    void randomBytes() throws IOException {
        Random random = new Random(9);
        byte[] whole = bytes(good(), StandardCharsets.UTF_8);
        int refused = 0;
        for (int i = 0; i < 100; i++) {
            byte[] broken = whole.clone();
            broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            try {
                WeatherFiles.read(file(broken));
            } catch (WeatherRefused e) {
                refused++;
            }
        }
        assertTrue(refused > 30, "only " + refused + " refused");
    }
}
