package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.warmvat.weather.file.WeatherFiles;

/** The command choose on some days of the built-in weather, and odd files of choices. */
class ChooseCommandTest {

    private static final int HOURS = 10 * 24;
    private static final String CHOICES = """
            by: cost
            years: 10
            interest: 0.02
            limits: {hours_below_floor: 5}
            choose:
              envelope.insulation_mm: {values: [60, 120], price_per_m2_mm: 0.4}
              solar.area_m2: {values: [2, 0], price_per_m2: 300}
              backup.rated_w: {values: [150, 400], price_each: [30, 50]}
              insulation:
                options:
                  - {label: foam, set: {envelope.insulation: pir_foam}, price: 0}
                  - {label: wool, set: {envelope.insulation: mineral_wool}, price_per_m2_mm: 0.01}
            fixed_prices: {tank: 500}
            """;

    @TempDir
    Path folder;

    private final Program program = new Program();
    private String design;
    private String weather;

    @BeforeEach
    void inputs() throws IOException {
        design = Files.writeString(folder.resolve("d.yaml"), """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2}
                envelope: {insulation_mm: 120}
                control: {setpoint_c: 36}
                feed: {feedstocks: [{kg_per_day: 10}]}
                solar: {area_m2: 2}
                backup: {rated_w: 400}
                gas: {}
                """).toString();
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long head = lines.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        weather = Files.write(folder.resolve("w.csv"), lines.subList(0, (int) head + HOURS))
                .toString();
    }

    private int choose(String text, String... more) throws IOException {
        Path choices = Files.writeString(folder.resolve("c.yaml"), text);
        List<String> words = new ArrayList<>(List.of(
                "choose",
                design,
                choices.toString(),
                weather,
                "--out",
                folder.resolve("out").toString(),
                "--replace"));
        words.addAll(List.of(more));
        return program.run(words.toArray(new String[0]));
    }

    private JsonNode summary() throws IOException {
        return new ObjectMapper()
                .readTree(Files.readString(folder.resolve("out/summary.json")))
                .path("choose");
    }

    @Test
    void theBestIsToldWithItsCostAndWhatItSaves() throws IOException {
        assertEquals(0, choose(CHOICES), program.err());
        JsonNode choose = summary();
        assertEquals(
                0, choose.path("best").path("choices").path("solar.area_m2").asDouble(), choose.toString());
        assertEquals(
                "foam", choose.path("best").path("choices").path("insulation").asText());
        assertTrue(choose.path("exhaustive").asBoolean());
        assertEquals(16, choose.path("combinations").asInt());
        assertEquals(17, choose.path("runs").asInt());
        assertEquals(5, choose.path("nearest").size());
        double outlay = choose.path("best").path("figures").path("outlay").asDouble();
        double annuity = 0.02 / (1 - Math.pow(1.02, -10));
        assertEquals(
                annuity * outlay
                        + choose.path("best")
                                .path("figures")
                                .path("energy_cost")
                                .asDouble()
                        - choose.path("best").path("figures").path("gas_worth").asDouble(),
                choose.path("best").path("cost").asDouble(),
                0.01);
        assertTrue(program.out().contains("Against the design as drawn, which costs"), program.out());
        assertTrue(program.out().contains("no advice to invest"), program.out());
        assertTrue(
                program.out()
                        .matches("(?s).*The best of what can be bought is insulation (60|120) mm, collector 0 m², .*"),
                program.out());
        assertTrue(Files.exists(folder.resolve("out/front.png")));
    }

    /** A best by the program's example prices of energy is not the user's best, unless he states his own. */
    @Test
    void examplePricesOfEnergyAreToldBesideTheVerdict() throws IOException {
        String told = "What energy costs and gas is worth are examples";
        assertEquals(0, choose(CHOICES), program.err());
        assertTrue(program.out().contains(told), program.out());
        Files.writeString(
                Path.of(design),
                Files.readString(Path.of(design))
                        + "prices: {electricity_per_kwh: 0.3, gas_worth_per_kwh: 0.1, fuel_per_kwh: 0.1}\n");
        assertEquals(0, choose(CHOICES), program.err());
        assertFalse(program.out().contains(told), program.out());
    }

    @Test
    void theOptionWinsOverTheFile() throws IOException {
        assertEquals(0, choose(CHOICES, "--by", "net"), program.err());
        assertEquals("net", summary().path("by").asText());
        assertEquals(
                2, summary().path("best").path("choices").path("solar.area_m2").asDouble());
        assertEquals(2, choose(CHOICES, "--by", "colour"));
        assertTrue(program.err().contains("\"colour\", expected one of cost, net, bought"), program.err());
    }

    @Test
    void whereNothingKeepsToTheLimitsTheAnswerSaysWhichBars() throws IOException {
        assertEquals(0, choose(CHOICES.replace("{hours_below_floor: 5}", "{budget: 0}")), program.err());
        assertTrue(
                program.out()
                        .contains("None of the 16 designs that were run keeps to the limits. What comes nearest is"),
                program.out());
        assertTrue(program.out().contains("to buy, where 0 of your money are the most"), program.out());
        assertTrue(program.out().contains("yearly cost, at example prices  to buy, of your money"), program.out());
        assertFalse(program.out().contains("EUR"), program.out());
        assertEquals(false, summary().path("limits_met").asBoolean());
        assertEquals(16, summary().path("barred_by").path("budget").asInt());
        assertEquals(0, summary().path("front").size());
    }

    /** File, line, key, what was found and what is allowed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    by: cost | by: best | c.yaml line 1: by "best", expected one of cost, net, bought
                    years: 10 | yaers: 10 | c.yaml line 2: yaers is not a known key, did you mean years?
                    years: 10 | years: 0 | c.yaml line 2: years 0, expected a number, above 0 and up to 100 years
                    interest: 0.02 | interest: 3 % | c.yaml line 3: interest "3 %", expected a number, 0 to 1
                    values: [60, 120] | values: [] | c.yaml line 6: choose.envelope.insulation_mm.values is a list without entries, expected a list with at least one entry
                    values: [60, 120] | values: [60, 60] | c.yaml line 6: choose.envelope.insulation_mm.values holds a value twice, expected each once
                    , price_per_m2_mm: 0.4 | | c.yaml line 6: choose.envelope.insulation_mm has no price, expected price_each, price_per_m2, price_per_m2_mm or several of them (0 for nothing)
                    price_each: [30, 50] | price_each: [30] | c.yaml line 8: choose.backup.rated_w.price_each has 1 prices, expected one for each of the 2 values
                    price_each: [30, 50] | price_per_m2: 3 | c.yaml line 8: choose.backup.rated_w.price_per_m2 has no area, expected a key that ends in area_m2 or one of the envelope
                    solar.area_m2: | solar.aera_m2: | c.yaml line 7: choose.solar.aera_m2 cannot be chosen: solar.aera_m2 is not a known key, did you mean solar.area_m2?
                    [150, 400] | [-5, 400] | c.yaml line 8: choose.backup.rated_w at -5: backup.rated_w -5, expected a number, 0 to 1000000 W
                    mineral_wool | chalk_wool | c.yaml line 9: choose.insulation at "wool": envelope.insulation "chalk_wool" is not a known material, expected one of
                    solar.area_m2: | envelope.wall.pir_foam.thickness_mm: | c.yaml line 7: choose.envelope.wall.pir_foam.thickness_mm at 0: envelope.wall[pir_foam].thickness_mm has no place
                    {envelope.insulation: mineral_wool} | {envelope.insulation_mm: 50} | c.yaml line 12: choose.insulation.options[1].set.envelope.insulation_mm is set by choose.envelope.insulation_mm too, expected one choice for each key
                    """)
    void oddFilesAreRefused(String from, String to, String fault) throws IOException {
        String text = CHOICES.replace(from, to == null ? "" : to);
        assertNotEquals(CHOICES, text);
        assertEquals(3, choose(text), program.out());
        String told = program.err().lines().findFirst().orElseThrow().replace(folder + "/", "");
        assertTrue(told.startsWith(fault), told);
        assertTrue(Files.notExists(folder.resolve("out")));
    }
}
