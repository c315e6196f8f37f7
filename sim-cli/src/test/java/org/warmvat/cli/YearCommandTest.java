package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class YearCommandTest {

    private static final String DESIGN = """
            title: "<b>Two days</b>"
            tank: {shape: upright_cylinder, inner_diameter_m: 1.0, liquid_depth_m: 1.15, stands_on: legs, place: sheltered}
            envelope: {shell: stainless_steel, shell_mm: 2, insulation: pir_foam, insulation_mm: 90}
            feed: {feedstocks: [{kg_per_day: 10}]}
            control: {setpoint_c: 36}
            backup: {source: electric, rated_w: 500}
            """;

    @TempDir
    private Path folder;

    private final Program program = new Program();

    @Test
    void writesTheFolderAndAnswersInSentences() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(0, year(design(), weather(48), "--out", out.toString()), program.err());
        assertEquals("", program.err());
        String said = program.out();
        assertTrue(said.startsWith("<b>Two days</b>\n"), said);
        assertTrue(said.contains("\nIn short\n  The tank was "), said);
        assertTrue(said.contains("\nCaution: biogas burns, explodes, poisons and suffocates"), said);
        assertTrue(said.endsWith("Report, tables and pictures: " + out.resolve("report.html") + "\n"), said);
        assertEquals(
                List.of(
                        "daily.csv",
                        "electricity_by_consumer.png",
                        "electricity_by_consumer.svg",
                        "first_week.png",
                        "first_week.svg",
                        "gas_and_net_energy.png",
                        "gas_and_net_energy.svg",
                        "heat_by_source.png",
                        "heat_by_source.svg",
                        "heat_loss.png",
                        "heat_loss.svg",
                        "hourly.csv",
                        "monthly.csv",
                        "report.html",
                        "summary.json",
                        "tank.png",
                        "tank.svg",
                        "tank_temperature.png",
                        "tank_temperature.svg"),
                names(out));
        assertFalse(Files.readString(out.resolve("report.html")).contains("<b>Two days"));
        assertEquals(49, Files.readAllLines(out.resolve("hourly.csv")).size());
    }

    @Test
    void jsonIsTheSummaryAndNothingElse() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(0, year(design(), weather(24), "--out", out.toString(), "--json", "--quiet"), program.err());
        assertEquals(Files.readString(out.resolve("summary.json")), program.out());
        assertEquals("", program.err());
    }

    @Test
    void theSameInputsGiveTheSameBytesWhereverTheyLie() throws IOException {
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        year(design(), weather(24), "--out", first.toString());
        year(design(), weather(24), "--out", second.toString());
        for (String name : names(first)) {
            assertArrayEquals(Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
        }
        assertEquals(names(first), names(second));
    }

    @Test
    void bothEnginesMayBeAskedFor() throws IOException {
        for (String engine : List.of("fast", "reference")) {
            Path out = folder.resolve(engine);
            assertEquals(0, year(design(), weather(24), "--out", out.toString(), "--engine", engine), program.err());
            String summary = Files.readString(out.resolve("summary.json"));
            assertTrue(summary.contains("\"engine\" : \"" + engine + "\""), engine);
        }
    }

    @Test
    void resultsThatStandThereAreKeptUnlessToldOtherwise() throws IOException {
        Path out = folder.resolve("out");
        year(design(), weather(24), "--out", out.toString());
        assertEquals(2, year(design(), weather(24), "--out", out.toString()));
        assertEquals(out + ": holds results already, expected --replace or another folder\n", program.err());
        assertEquals(0, year(design(), weather(24), "--out", out.toString(), "--replace"), program.err());
    }

    @Test
    void aRefusedFolderIsToldBeforeAnythingIsRead() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
        assertEquals(2, year("no design", "no weather", "--out", file.toString()));
        assertEquals(file + ": is a file, expected a folder or a new name\n", program.err());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void faultsOfBothFilesComeTogetherAndNothingIsWritten() throws IOException {
        Path design = Files.writeString(folder.resolve("bad.yaml"), DESIGN.replace("rated_w: 500", "rated_w: -5"));
        Path weather =
                Files.writeString(folder.resolve("bad.csv"), weatherText(24).replace("T05:00,4.0", "T05:00,warm"));
        Path out = folder.resolve("out");
        assertEquals(3, year(design.toString(), weather.toString(), "--out", out.toString()));
        List<String> faults = program.err().lines().toList();
        assertEquals(2, faults.size(), program.err());
        assertTrue(faults.get(0).startsWith(design + " line 6: backup.rated_w -5, expected "), faults.get(0));
        assertTrue(faults.get(1).startsWith(weather + " line 14: air_c \"warm\", expected "), faults.get(1));
        assertEquals("", program.out());
        assertFalse(Files.exists(out));
    }

    @Test
    void missingFilesAndFoldersAreNamed() {
        String out = folder.resolve("out").toString();
        assertEquals(3, year("none.yaml", "none.csv", "--out", out));
        assertEquals("none.yaml: no such file\nnone.csv: no such file\n", program.err());
        assertEquals(3, year(folder.toString(), folder.toString(), "--out", out));
        String fact = folder + ": is a folder, expected a file\n";
        assertEquals(fact + fact, program.err());
    }

    @Test
    void designAndWeatherThatDoNotGoTogetherAreRefused() throws IOException {
        Path design =
                Files.writeString(folder.resolve("d.yaml"), DESIGN.replace("stands_on: legs", "stands_on: ground"));
        Path out = folder.resolve("out");
        assertEquals(3, year(design.toString(), weather(24), "--out", out.toString()));
        assertEquals(
                "ground: nothing tells the ground temperature, which this design uses: the weather file has no ground_c"
                        + " column and is shorter than a year; expected ground: {mean_c, amplitude_k, coldest_day} in the"
                        + " design\n",
                program.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void wrongUseIsToldInALineAndWhereToReadOn() {
        assertEquals(2, program.run("year", "--engine", "steam"));
        assertEquals(
                "Invalid value for option '--engine': \"steam\", expected one of fast, reference\nSee warmvat year --help\n",
                program.err());
        assertEquals(2, program.run("new", "a", "b"));
        assertEquals("Unmatched argument at index 2: 'b'\nSee warmvat new --help\n", program.err());
        assertEquals(2, program.run("year", "--out"));
        assertEquals("Missing required parameter for option '--out' (DIR)\nSee warmvat year --help\n", program.err());
    }

    @Test
    void helpNamesEveryOption() {
        assertEquals(0, program.run("year", "--help"));
        for (String option : List.of("--out", "--replace", "--engine", "--json", "--quiet", "--trace", "DESIGN")) {
            assertTrue(program.out().contains(option), option);
        }
    }

    /** Foam so dear that it never pays, and no collector: the fewest design-years that a payback takes. */
    @Test
    void paybackIsToldInAnswerReportAndSummary() throws IOException {
        String design = write(
                "thin.yaml",
                DESIGN.replace("insulation_mm: 90", "insulation_mm: 20") + "prices: {foam_per_m3: 100000}\n");
        Path out = folder.resolve("out");
        assertEquals(0, program.run("year", design, "--out", out.toString(), "--payback"), program.err());
        String limit =
                "Already the step from 10 mm of insulation in the wall to 20 mm does not pay for itself within 15 years";
        assertTrue(program.out().contains(limit), program.out());
        assertTrue(program.out().contains("The design has no collector."), program.out());
        assertTrue(program.out().contains("insulation in the wall, mm  costs more, at example prices"), program.out());
        assertTrue(Files.readString(out.resolve("report.html")).contains("Would more insulation or collector pay?"));
        String summary = Files.readString(out.resolve("summary.json"));
        assertTrue(summary.contains(limit), summary);
        assertTrue(summary.contains("\"foam_mm\" : ["), summary);
        assertTrue(summary.contains("\"collector_m2\" : null"), summary);
    }

    @Test
    void noPaybackIsToldOfAFewHoursNorWithoutBeingAsked() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(0, year(design(), weather(24), "--out", out.toString(), "--payback"), program.err());
        assertTrue(
                program.out().contains("covers 24 hours, less than a year, so that no payback is told."),
                program.out());
        assertEquals(0, year(design(), weather(24), "--out", out.toString(), "--replace"), program.err());
        assertFalse(program.out().contains("Would more insulation"), program.out());
        assertFalse(Files.readString(out.resolve("summary.json")).contains("\"payback\""));
    }

    private int year(String design, String weather, String... more) {
        return program.run(Stream.concat(Stream.of("year", design, weather), Stream.of(more))
                .toArray(String[]::new));
    }

    private String design() {
        return write("two-days.yaml", DESIGN);
    }

    private String weather(int hours) {
        return write("days-" + hours + ".csv", weatherText(hours));
    }

    private String write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8)
                    .toString();
        } catch (IOException unwritable) {
            throw new AssertionError(unwritable);
        }
    }

    static String weatherText(int hours) {
        StringBuilder text = new StringBuilder("""
                # warmvat weather 1
                # site: Nowhere (invented)
                # latitude_deg: 53.1
                # longitude_deg: -2.4
                # elevation_m: 120
                # utc_offset_h: 0
                # stamp: hour_end
                # origin: made for a test
                time,air_c,global_w_m2
                """);
        for (int hour = 1; hour <= hours; hour++) {
            int light = hour % 24 > 9 && hour % 24 < 16 ? 120 : 0;
            text.append(String.format(Locale.ROOT, "2025-01-%02dT%02d:00,4.0,%d\n", 1 + hour / 24, hour % 24, light));
        }
        return text.toString();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
        }
    }
}
