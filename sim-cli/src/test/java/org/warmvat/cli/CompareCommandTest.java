package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;

/** {@code compare}, from files to its answer. */
class CompareCommandTest {

    @TempDir
    Path folder;

    private final Program program = new Program();
    private String plain;
    private String thin;
    private String weather;
    private String milder;

    @BeforeEach
    void files() throws IOException {
        String text = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
        plain = file("plain.yaml", text);
        thin = file(
                "thin.yaml",
                text.replaceFirst("material: pir_foam, thickness_mm: 90", "material: pir_foam, thickness_mm: 12"));
        weather = file("cold.csv", YearCommandTest.weatherText(24 * 20));
        milder = file("mild.csv", YearCommandTest.weatherText(24 * 20).replace(",4.0,", ",14.0,"));
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private int compare(String... words) {
        String[] all = Stream.of(List.of("compare"), List.of(words), List.of("--out", out(), "--replace"))
                .flatMap(List::stream)
                .toArray(String[]::new);
        return program.run(all);
    }

    private String out() {
        return folder.resolve("out").toString();
    }

    private JsonNode summary() throws IOException {
        return new ObjectMapper().readTree(folder.resolve("out/summary.json").toFile());
    }

    @Test
    void twoDesignsStandSideBySideWithWhatDiffersAndTheGravestOfEach() throws IOException {
        assertEquals(0, compare(plain, thin, "--weather", weather), program.err());
        JsonNode summary = summary();
        assertEquals("plain", summary.at("/compare/designs/0/name").asText());
        assertEquals("thin", summary.at("/compare/designs/1/name").asText());
        assertTrue(summary.at("/compare/designs/1/figures/backup_bought_kwh").asDouble()
                > summary.at("/compare/designs/0/figures/backup_bought_kwh").asDouble());
        assertEquals(
                1,
                summary.at("/compare/differences").size(),
                summary.at("/compare/differences").toString());
        assertEquals("90", summary.at("/compare/differences/0/values/0").asText());
        assertEquals("12", summary.at("/compare/differences/0/values/1").asText());
        String but = summary.at("/verdict/but").toString();
        assertTrue(but.contains("thin: The main insulation of wall or lid is 12 mm thick"), but);
        assertTrue(program.out().contains("Energy bought for the backup heater: plain is best"), program.out());
        assertTrue(program.out().contains("second less first"), program.out());
        assertEquals(3, summary.at("/inputs").size());
        assertTrue(summary.at("/cautions").size() > 8);
        assertTrue(Files.exists(folder.resolve("out/slurry.svg")));
        assertTrue(Files.readString(folder.resolve("out/compare.csv")).startsWith("design,weather,hours,"));
    }

    @Test
    void oneDesignInTwoWeathersIsToldByTheWeather() throws IOException {
        assertEquals(0, compare(plain, "--weather", weather, "--weather", milder), program.err());
        assertEquals("cold", summary().at("/compare/designs/0/name").asText());
        assertEquals(0, summary().at("/compare/differences").size());
        assertTrue(program.out().contains("The design is one; only the weather differs."), program.out());
        assertTrue(program.out().contains("Energy bought for the backup heater: mild is best"), program.out());
    }

    @Test
    void twoDesignsInTwoWeathersAreToldByBoth() throws IOException {
        assertEquals(0, compare(plain, thin, "--weather", weather, "--weather", milder), program.err());
        assertEquals("thin in cold", summary().at("/compare/designs/2/name").asText());
        assertEquals(4, summary().at("/compare/differences/0/values").size());
        assertTrue(program.out().contains("Each less plain in cold"), program.out());
    }

    @Test
    void theSameTwiceIsSaidToBeTheSame() throws IOException {
        assertEquals(0, compare(plain, plain, "--weather", weather), program.err());
        assertEquals("plain (2)", summary().at("/compare/designs/1/name").asText());
        assertEquals(
                "Nothing that was compared comes out differently.",
                summary().at("/verdict/sentence").asText());
        assertTrue(program.out().contains("The designs are the same in every key."), program.out());
        assertFalse(summary().at("/verdict/but").toString().contains("plain"), program.out());
    }

    @Test
    void withoutGasInOneOfThemNothingIsSaidOfNetEnergy() throws IOException {
        String text = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
        String without = file("bare.yaml", text.replaceFirst("(?s)\ngas:.*?(?=\n[a-z])", "\n"));
        assertEquals(0, compare(plain, without, "--weather", weather), program.err());
        assertFalse(program.out().contains("Net energy: "), program.out());
        assertTrue(program.out().contains("net energy, kWh"), program.out());
    }

    @Test
    void allFaultsOfAllFilesAreToldAtOnce() throws IOException {
        String faulty = file("faulty.yaml", "tank: {inner_diameter_m: -1}\n");
        assertEquals(
                3,
                compare(plain, faulty, "--weather", folder.resolve("none.csv").toString()));
        assertTrue(program.err().contains("faulty.yaml line 1"), program.err());
        assertTrue(program.err().contains("none.csv: no such file"), program.err());
    }

    @Test
    void oneColumnIsWrongUse() {
        assertEquals(2, compare(plain, "--weather", weather));
        assertTrue(
                program.err()
                        .startsWith("There is nothing to compare with, expected a second DESIGN or a second --weather"),
                program.err());
    }
}
