package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exact: temperatures by universal time and radiation by true solar time become one file of local standard time, as the page says. */
class JoinedWeatherTest {

    private static final Path DOCS = Path.of("..", "docs");
    private static final Path LAYOUT = DOCS.resolve("examples/joined-layout.yaml");

    @TempDir
    private Path folder;

    private final Program program = new Program();

    private List<String[]> converted() throws IOException {
        Path out = folder.resolve("year.csv");
        assertEquals(
                0,
                program.run(
                        "weather",
                        "convert",
                        DOCS.resolve("examples/joined.txt").toString(),
                        "--layout",
                        LAYOUT.toString(),
                        "--out",
                        out.toString()),
                program.err());
        return Files.readAllLines(out).stream()
                .filter(line -> line.startsWith("2025"))
                .map(line -> line.split(","))
                .toList();
    }

    private static double cell(List<String[]> rows, String time, int column) {
        return Double.parseDouble(
                rows.stream().filter(row -> row[0].equals(time)).findFirst().orElseThrow()[column]);
    }

    @Test
    void theLayoutOnThePageIsTheExample() throws IOException {
        String page = Files.readString(DOCS.resolve("weather-file.md"));
        assertTrue(page.contains("```\n" + Files.readString(LAYOUT) + "```\n"));
    }

    @Test
    void eachFileComesOntoTheHoursOfThePlaceByItsOwnClock() throws IOException {
        List<String[]> rows = converted();
        // warmest at 14 h universal time, 21.0 °C: 15 h at the place
        assertEquals(21.0, cell(rows, "2025-06-10T15:00", 1), 1e-9);
        assertEquals(20.8, cell(rows, "2025-06-10T14:00", 1), 1e-9);
        assertEquals(0.44, cell(rows, "2025-06-10T15:00", 2), 1e-9);
        double sum = 0;
        double moment = 0;
        for (String[] row : rows) {
            if (row[0].startsWith("2025-06-11")) {
                double watts = Double.parseDouble(row[3]);
                sum += watts;
                moment += watts * (Integer.parseInt(row[0].substring(11, 13)) + 0.5);
            }
        }
        // true noon at 9.7 degrees east is 12:21 by UTC+1, less the equation of time of half a minute
        assertEquals(12 + 21.2 / 60 - 0.5 / 60, moment / sum, 0.02);
        double given = Files.readAllLines(DOCS.resolve("examples/joined-radiation.txt")).stream()
                        .filter(line -> line.startsWith("20250611") && !line.startsWith("2025061100"))
                        .mapToDouble(line -> Double.parseDouble(line.split(";")[1]))
                        .sum()
                / 0.36;
        assertEquals(given, sum, 1e-4 * given);
    }

    /** The midnight between two true solar days is no hole. */
    @Test
    void noHourOfRadiationIsLostAtMidnight() throws IOException {
        converted();
        String said = program.out() + program.err();
        assertTrue(said.contains("1 missing values of air_c"), said);
        assertFalse(said.contains("missing values of global_w_m2"), said);
    }
}
