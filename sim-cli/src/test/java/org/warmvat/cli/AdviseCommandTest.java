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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;

/** {@code advise}, from files to its answer. */
class AdviseCommandTest {

    @TempDir
    Path folder;

    private final Program program = new Program();

    private JsonNode advise(String design, String weather) throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), design);
        Path hours = Files.writeString(folder.resolve("frost.csv"), weather);
        Path out = folder.resolve("out");
        int code = program.run("advise", file.toString(), hours.toString(), "--out", out.toString(), "--replace");
        assertEquals(0, code, program.err());
        return new ObjectMapper().readTree(out.resolve("summary.json").toFile());
    }

    private static String demonstration() {
        return new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
    }

    private static String frost() {
        return YearCommandTest.weatherText(24 * 12).replace(",4.0,", ",-24.0,");
    }

    @Test
    void theDangersOfADesignComeFirstEachWithWhatComesOfItsRemedyAndTheCommand() throws IOException {
        JsonNode summary = advise(demonstration(), frost());
        JsonNode first = summary.at("/advise/recommendations/0");
        assertEquals(1, first.at("/rank").asInt());
        assertTrue(first.at("/sentence").asText().startsWith("The solar loop cools to "), first.toString());
        assertTrue(first.at("/sentence").asText().contains("slurry at most"), first.toString());
        assertEquals("solar.loop_freezes_c", first.at("/key").asText());
        assertEquals(-20, first.at("/from").asDouble());
        assertEquals(-30, first.at("/to").asDouble());
        assertEquals(
                "warmvat vary mine.yaml frost.csv --set 'solar.loop_freezes_c=-20,-30'",
                first.at("/command").asText());
        assertTrue(summary.at("/advise/recommendations").size() <= 7);
        assertFalse(summary.at("/verdict/but").isEmpty());
        assertTrue(Files.exists(folder.resolve("out/recommendations.csv")));
    }

    @Test
    void withoutPricesOfItsOwnNothingIsSaidOfMoney() throws IOException {
        JsonNode summary = advise(demonstration().replaceFirst("(?s)\nprices:.*?(?=\n[a-z]|$)", "\n"), frost());
        summary.at("/advise/recommendations")
                .forEach(one -> assertTrue(one.at("/effect_money").isNull()));
        assertTrue(program.out().contains("Money is left out"), program.out());
    }

    @Test
    void aSlipIsAllThatIsSaid() throws IOException {
        JsonNode summary = advise(demonstration().replaceFirst("kg_per_day: \\d+", "kg_per_day: 900"), frost());
        assertEquals(
                "warmvat check mine.yaml frost.csv",
                summary.at("/advise/recommendations/0/command").asText());
        assertTrue(
                summary.at("/verdict/sentence").asText().startsWith("Before any advice "),
                summary.at("/verdict").toString());
        assertTrue(summary.at("/advise/recommendations/0/key").isNull());
    }
}
