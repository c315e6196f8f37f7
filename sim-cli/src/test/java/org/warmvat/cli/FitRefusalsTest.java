package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What {@code fit} says of logs, layouts and options that it cannot use. */
class FitRefusalsTest extends FitRuns {

    @Test
    void logsThatCannotTellAreRefusedWithWhatTheyWouldNeed() throws IOException {
        Path day = log("day.csv", rows(20, false, START));
        assertEquals(
                List.of(
                        "the log is too short: 41 readings over 20.0 h, expected at least 12 over 27 h (a twentieth of the time"
                                + " constant of 535 h as drawn, and 3 h); let the tank cool for longer, better for several days"),
                refused(design, day));
        List<String> flat = rows(72, false, START).stream()
                .map(row -> row.substring(0, 16) + ",5.0,4.5,0,0")
                .toList();
        List<String> said = refused(design, log("flat.csv", flat));
        assertEquals(2, said.size(), said.toString());
        assertTrue(
                said.get(0).startsWith("the log is flat: the slurry moves by 0.00 K, expected 0.2 K or more"),
                said.get(0));
        assertTrue(said.get(1).startsWith("the slurry is as warm as its surroundings (0.5 K apart"), said.get(1));
        Path airless = log(
                "airless.csv",
                "time,slurry_c",
                rows(72, false, START).stream().map(row -> row.substring(0, 23)).toList());
        assertEquals(
                List.of("nothing tells the air around the tank, expected a column air_c in the log or --weather"),
                refused(design, airless));
    }

    @Test
    void whatIsLeftOutOfALogIsSaidWhereTooLittleIsLeft() throws IOException {
        assertEquals(
                List.of("the log is too short: 1 reading over 0.0 h, expected at least 12 over 3 h and more"),
                refused(design, log("one.csv", rows(72, true, START).subList(0, 1))));
        List<String> blank = rows(72, true, START).stream()
                .map(row -> row.endsWith(",0,0") ? row.substring(0, row.length() - 3) + ",0" : row)
                .toList();
        List<String> said = refused(design, log("blank.csv", blank));
        assertEquals(1, said.size(), said.toString());
        assertTrue(
                said.get(0)
                        .endsWith(
                                "; 52.0 h of the log are left out, where rows are missing or a heat has no value: write 0"
                                        + " where nothing went in"),
                said.get(0));
    }

    @Test
    void faultsOfAllFilesAreToldAtOnce() throws IOException {
        Path layout = Files.writeString(
                folder.resolve("layout.yaml"),
                "text: {delimiter: \"::\"}\ntime: {columns: Zeit, form: DD.MM}\ncolumns: {slurry_c: {column: 2, unit: x}, air: 3}\n");
        assertEquals(
                List.of(
                        "layout.yaml line 1: text.delimiter \"::\"",
                        "layout.yaml line 2: time.form \"DD.MM\"",
                        "layout.yaml line 3: columns.slurry_c.unit \"x\"",
                        "layout.yaml line 3: columns.air is not a known key",
                        "a.csv: no such file",
                        "b.csv: no such file",
                        "c.csv: no such file"),
                refused(design, "a.csv", "b.csv", "--log-layout", layout, "--weather", "c.csv").stream()
                        .map(line -> line.replace(folder + java.io.File.separator, "")
                                .replaceAll(", (expected|known).*", ""))
                        .toList());
    }

    @Test
    void textsThatAreNoLogsAreRefusedInOneLine() throws IOException {
        List<String> rows = rows(30, false, START);
        assertOneLine("is empty", Files.writeString(folder.resolve("log.csv"), ""));
        assertOneLine("no rows, expected readings of the slurry", log("log.csv", List.of()));
        assertOneLine(
                "line 1: a row of values, expected a line of column names before it, such as time,slurry_c,air_c",
                log("log.csv", rows.get(0), rows.subList(1, 9)));
        assertOneLine(
                "line 1: semicolons between the names, expected commas, and points in the numbers; any other text is read"
                        + " with --log-layout",
                log("log.csv", "time;slurry_c", rows));
        assertOneLine(
                "line 1: \"# warmvat weather 1\", expected \"# warmvat log 1\" or a line of column names; any other text is read"
                        + " with --log-layout",
                Files.writeString(folder.resolve("log.csv"), YearCommandTest.weatherText(3)));
        assertOneLine(
                "line 1: no column slurry_c (or slurry_NAME_c for several sensors), which is required; any other text is read"
                        + " with --log-layout",
                log(
                        "log.csv",
                        "time,air_c",
                        rows.stream().map(row -> row.substring(0, 19)).toList()));
        assertEquals(List.of("none.csv: no such file"), refused(design, "none.csv"));
        assertEquals(
                List.of("--sensor top: the log has no such sensor, expected one of slurry_c"),
                refused(design, log("log.csv", rows), "--sensor", "top"));
    }

    private void assertOneLine(String said, Path log) {
        List<String> lines = refused(design, log);
        assertEquals(List.of(log + (said.startsWith("line") ? " " : ": ") + said), lines);
    }

    @Test
    void aFactorThatIsNoneIsAWrongOption() throws IOException {
        assertEquals(2, run(design, log("log.csv", rows(30, false, START)), "--factors", "envelope,foam"));
        assertTrue(
                program.err()
                        .startsWith(
                                "--factors foam, expected envelope, fittings, capacity, solar_coil, backup_coil or"),
                program.err());
    }

    @Test
    void aFactorOnNothingIsRefused() throws IOException {
        Path log = log("log.csv", rows(72, true, START));
        assertEquals(
                List.of(
                        "the factor fittings cannot be found: the design has no fittings; expected --factors without it",
                        "the factor collector cannot be found: the design has no solar circuit; expected --factors without"
                                + " it"),
                refused(design, log, "--factors", "envelope,fittings,collector"));
    }
}
