package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.weather.file.WeatherFiles;
import picocli.CommandLine;

/** The command spread, on ten days of the built-in weather. */
class SpreadCommandTest {

    private static final int HOURS = 10 * 24;
    private static final String UNCERTAIN = """
            mixer.drive_efficiency: {low: 0.5, high: 1.2}
            adjust.envelope: {low: 0.9, high: 1.1, times: true, shape: even}
            """;

    @TempDir
    static Path folder;

    private static Path design;
    private static Path weather;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeAll
    static void writeInputs() throws IOException {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long head = lines.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        weather = folder.resolve("ten-days.csv");
        Files.write(weather, lines.subList(0, (int) head + HOURS));
        design = Files.write(folder.resolve("tank.yaml"), DesignDocument.demonstrationBytes());
    }

    private int run(Object... args) {
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        return line.execute(Stream.of(args).map(Object::toString).toArray(String[]::new));
    }

    private Path spread(String name, Object... more) throws IOException {
        Path uncertain = Files.writeString(folder.resolve("uncertain.yaml"), UNCERTAIN);
        List<Object> args = new ArrayList<>(List.of(
                "spread",
                design,
                weather,
                weather,
                "--uncertain",
                uncertain,
                "--draws",
                "10",
                "--out",
                folder.resolve(name)));
        args.addAll(List.of(more));
        assertEquals(0, run(args.toArray()), err.toString());
        return folder.resolve(name);
    }

    @Test
    void theSummaryHasWhatTheFormAsksFor() throws IOException {
        JsonNode whole =
                new ObjectMapper().readTree(Files.readAllBytes(spread("whole").resolve("summary.json")));
        JsonNode summary = whole.path("spread");
        assertEquals(10, summary.path("draws").asInt());
        assertEquals(
                "[\"ten-days.csv\",\"ten-days.csv (2)\"]", summary.path("years").toString());
        for (String point : List.of("p5", "p50", "p95")) {
            assertTrue(summary.at("/figures/net_energy_kwh/" + point).isNumber(), point);
        }
        for (String gas : List.of("low_gas", "middle_gas", "high_gas")) {
            assertTrue(summary.at("/chances/net_positive/" + gas + "/value").isNumber(), gas);
            assertTrue(summary.at("/chances/net_positive/" + gas + "/error").isNumber(), gas);
        }
        assertEquals(1, summary.at("/chances/never_short/value").asDouble());
        String but = whole.at("/verdict/but").toString();
        assertFalse(but.contains("No hour is below"), "what is certain is no but: " + but);
        assertTrue(but.contains("what it does not name counts as known"), but);
        List<String> keys = new ArrayList<>();
        summary.path("influence").forEach(one -> keys.add(one.path("key").asText()));
        assertEquals(3, keys.size());
        assertTrue(
                keys.containsAll(List.of("mixer.drive_efficiency", "adjust.envelope", "weather.year")),
                keys.toString());
        assertTrue(
                summary.path("method").asText().contains("Jansen (1999), from 25 runs"),
                summary.path("method").asText());
        assertEquals("design uncertain weather weather", roles(whole));
    }

    private static String roles(JsonNode summary) {
        List<String> roles = new ArrayList<>();
        summary.path("inputs").forEach(input -> roles.add(input.path("role").asText()));
        return String.join(" ", roles);
    }

    /** The efficiency may be 1 at most: draws beyond are held, counted and told. */
    @Test
    void whatIsHeldAtTheEndOfItsRangeIsTold() throws IOException {
        Path written = spread("held");
        JsonNode summary = new ObjectMapper().readTree(Files.readAllBytes(written.resolve("summary.json")));
        List<String> rows = Files.readAllLines(written.resolve("draws.csv"));
        assertTrue(
                rows.get(0).startsWith("draw,year,mixer.drive_efficiency,adjust.envelope factor,hours,"), rows.get(0));
        long beyond = rows.stream()
                .skip(1)
                .filter(row -> Double.parseDouble(row.split(",")[2]) > 1)
                .count();
        assertTrue(beyond > 0 && beyond < 10, "beyond: " + beyond);
        assertEquals(
                "{\"mixer.drive_efficiency\":" + beyond + "}",
                summary.at("/spread/held_at_range").toString());
        assertTrue(
                out.toString()
                        .contains(
                                "mixer drive efficiency was drawn beyond what the key allows and held at the end of its range in "
                                        + beyond + " of the 10 draws."),
                out.toString());
    }

    @Test
    void everyFileIsTheSameOnAnyNumberOfThreads() throws IOException {
        Path one = spread("one", "--threads", 1);
        Path three = spread("three", "--threads", 3);
        try (Stream<Path> files = Files.list(one)) {
            for (Path file : files.toList()) {
                assertArrayEquals(
                        Files.readAllBytes(file),
                        Files.readAllBytes(three.resolve(file.getFileName())),
                        file.toString());
            }
        }
    }

    @Test
    void faultsOfTheFileAreToldWithTheirLines() throws IOException {
        Path wrong = Files.writeString(folder.resolve("wrong.yaml"), """
                solar.aera_m2: {low: 1, high: 2}
                adjust.envelope: {low: 1.1, high: 0.9}
                weather.air_offset_k: {low: 1, high: 2, times: true}
                solar.area_m2: {low: 1, high: 2}
                solar.tilt_deg: {low: 1, hihg: 2}
                """);
        assertEquals(3, run("spread", design, weather, "--uncertain", wrong, "--draws", 10));
        assertEquals(
                wrong + " line 5: solar.tilt_deg.hihg is not a known key, did you mean solar.tilt_deg.high?\n" + wrong
                        + " line 5: solar.tilt_deg.high is missing, expected a number, -100000000 to 100000000\n",
                err.toString());
        err.getBuffer().setLength(0);
        Files.writeString(wrong, Files.readString(wrong).replace("hihg", "high"));
        assertEquals(3, run("spread", design, weather, "--uncertain", wrong, "--draws", 10));
        assertEquals(
                wrong + " line 1: solar.aera_m2 is not a known key, did you mean solar.area_m2?\n" + wrong
                        + " line 2: adjust.envelope.low 1.1, expected a number below high 0.9\n" + wrong
                        + " line 3: weather.air_offset_k.times true, expected kelvins: the weather file's air has no offset to"
                        + " multiply\n",
                err.toString());
    }

    @Test
    void twoKeysOfOneNumberAndAnEmptyFileAreRefused() throws IOException {
        Path twice = Files.writeString(folder.resolve("twice.yaml"), """
                envelope.wall.pir_foam.thickness_mm: {low: 80, high: 100}
                envelope.wall[1].thickness_mm: {low: 80, high: 100}
                """);
        assertEquals(3, run("spread", design, weather, "--uncertain", twice));
        assertEquals(
                twice + " line 2: envelope.wall[1].thickness_mm leads to the same number as"
                        + " envelope.wall.pir_foam.thickness_mm, expected one of them\n",
                err.toString());
        err.getBuffer().setLength(0);
        Files.writeString(twice, "{}\n");
        assertEquals(3, run("spread", design, weather, "--uncertain", twice));
        assertEquals(twice + " line 1: 0 inputs, expected 1 to 100\n", err.toString());
        err.getBuffer().setLength(0);
        assertEquals(2, run("spread", design, weather, "--draws", 1));
        assertTrue(err.toString().startsWith("--draws 1, expected 8 to 100000"), err.toString());
    }

    /** Spreads that run into each other are found when they are drawn, and named. */
    @Test
    void aDrawThatIsNotAllowedNamesTheFile() throws IOException {
        Path close = Files.writeString(folder.resolve("close.yaml"), """
                gas.temperatures_c.best: {low: 30, high: 45}
                gas.temperatures_c.least: {low: 5, high: 28}
                """);
        assertEquals(3, run("spread", design, weather, "--uncertain", close, "--draws", 40));
        assertTrue(err.toString().startsWith(close + ": run "), err.toString());
        assertTrue(err.toString().endsWith("expected spreads that stay apart\n"), err.toString());
    }

    @Test
    void theProposalIsTheExampleFileAndFitsTheDemonstration() throws IOException {
        Path example = Path.of("..", "docs", "examples", "uncertain.yaml");
        try (var builtIn = DesignDocument.class.getResourceAsStream("uncertain.yaml")) {
            assertArrayEquals(builtIn.readAllBytes(), Files.readAllBytes(example));
        }
        assertEquals(
                0, run("spread", design, weather, "--draws", 8, "--out", folder.resolve("proposed")), err.toString());
        assertTrue(out.toString().contains("14 inputs were drawn"), out.toString());
        assertTrue(out.toString().contains("The spreads are the program's proposal"), out.toString());
    }
}
