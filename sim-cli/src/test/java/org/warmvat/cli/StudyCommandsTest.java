package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.weather.file.WeatherFiles;

/** The commands carry, backup and hold on the demonstration's tank in six weeks of its weather. */
class StudyCommandsTest {

    private static final int HEADER_LINES = 20;
    private static final int HOURS = 42 * 24;

    @TempDir
    Path folder;

    private final Program program = new Program();
    private Path weather;
    private Path design;

    @BeforeEach
    void cutSixWeeks() throws IOException {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long lead = lines.stream()
                        .limit(HEADER_LINES)
                        .filter(line -> line.startsWith("#"))
                        .count()
                + 1;
        weather = folder.resolve("weather.csv");
        Files.writeString(weather, lines.stream().limit(lead + HOURS).collect(Collectors.joining("\n", "", "\n")));
        design = folder.resolve("design.yaml");
        Files.write(design, DesignDocument.demonstrationBytes());
    }

    private Path results(String name) {
        return folder.resolve(name);
    }

    private int run(String out, String command, String... more) {
        List<String> args = Stream.concat(
                        Stream.of(
                                command,
                                design.toString(),
                                weather.toString(),
                                "--out",
                                results(out).toString()),
                        Stream.of(more))
                .toList();
        return program.run(args.toArray(String[]::new));
    }

    private String summary(String out) throws IOException {
        return Files.readString(results(out).resolve("summary.json"));
    }

    @Test
    void carryAnswersAndKeepsTheBytesOnAnyNumberOfThreads() throws IOException {
        assertEquals(0, run("one", "carry", "--from", "01-10", "--to", "01-30", "--threads", "1"));
        assertTrue(program.out().contains("No: from 10 January to 30 January the solar coil alone kept the slurry"));
        assertTrue(program.out().contains("hot water scalds"));
        assertTrue(summary("one").contains("\"carried\" : \"no\""));
        assertEquals(0, run("three", "carry", "--from", "01-10", "--to", "01-30", "--threads", "3", "--json"));
        assertEquals(summary("three"), program.out());
        sameFiles("one", "three");
    }

    @Test
    void holdAnswersForAHeaterAndAPowerCut() throws IOException {
        assertEquals(0, run("hold", "hold", "--from", "01-15", "--temperatures", "34,30"));
        assertTrue(program.out().contains("The heater fails: how long does it stay warm?"));
        assertTrue(program.out().contains("The power fails: how long does it stay warm?"));
        assertTrue(program.out().contains("Without the solar circuit, a fill of 10.0 °C at 00:00 on 15 January"));
        assertTrue(summary("hold").contains("\"time_constant_h\""));
        assertTrue(Files.exists(results("hold").resolve("cooling.csv")));
    }

    /** A tank without heater: what it stands below and what it never reaches is said once each, and no heater is spoken of. */
    @Test
    void holdOfAColdTankInAShortFileIsToldInAFewWords() throws IOException {
        Files.writeString(design, """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation: pir_foam, insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                """);
        assertEquals(0, run("cold", "hold", "--temperatures", "34,30,-20,-30"), program.err());
        String said = program.out();
        assertTrue(
                said.contains(
                        "it stands at or below 34.0 °C and 30.0 °C already; it does not cool to -20.0 °C and -30.0 °C"
                                + " in the 1008 hours (42.0 days) followed."),
                said);
        assertTrue(said.contains("the slurry stands at or below 34.0 °C already in half or more."), said);
        assertTrue(
                said.contains("Without the solar circuit, a fill of 10.0 °C at 00:00 on 20 January does not reach"),
                said);
        assertFalse(said.contains("backup gives"), said);
        assertTrue(said.contains("February"), said);
        assertFalse(said.contains("March"), said);
    }

    @Test
    void backupNamesEachOfItsWeatherFiles() {
        assertEquals(0, run("two", "backup", weather.toString(), "--sizes", "1000,250"), program.err());
        assertTrue(program.out().contains("In weather.csv (2) a heater of "), program.out());
        assertTrue(program.out().contains("Year by year, with the chosen heater of"), program.out());
        assertTrue(program.out().contains("EUR and sets free"), program.out());
    }

    /** Five days of rest and ten of grace lie in the file; both files together hold twice as many. */
    @Test
    void backupAndSizesTellTheDaysThatCountAsWarmWhateverTheSlurryDoes() throws IOException {
        Files.writeString(design, """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36, grace_days: 10}
                backup: {}
                gas: {}
                calendar: [{from: "01-11", to: "01-15", setpoint_c: 20, minimum: none}]
                """);
        assertEquals(0, run("rest", "backup", weather.toString()), program.err());
        assertTrue(
                program.out()
                        .contains(
                                "By the calendar on 10 of the days no minimum holds and on 20 the tank is given time to"
                                        + " warm up after a rest: these count as warm enough."),
                program.out());
        JsonNode told = new ObjectMapper().readTree(summary("rest"));
        assertEquals(10, told.path("days_without_minimum").asInt());
        assertEquals(20, told.path("days_warming_up").asInt());
        assertEquals(0, run("rest-sizes", "sizes", "--litres", "900"), program.err());
        JsonNode sized = new ObjectMapper().readTree(summary("rest-sizes"));
        assertEquals(5, sized.path("days_without_minimum").asInt());
        assertEquals(10, sized.path("days_warming_up").asInt());
    }

    /** The coldest week of the file, 20 January, is one of rest: there no heater warms the fill to 36 °C, and none is asked to. */
    @Test
    void theWarmUpBeginsWhereTheCalendarAsksForWarmth() throws IOException {
        Files.writeString(design, """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                backup: {}
                gas: {holder: {useful_m3: 0.2}, uses: [{name: stove, kind: burner, kw: 0.5, efficiency: 0.5}]}
                calendar: [{from: "01-12", to: "02-01", setpoint_c: 20, minimum: none}]
                """);
        assertEquals(0, run("rest-backup", "backup"), program.err());
        JsonNode told = new ObjectMapper().readTree(summary("rest-backup"));
        assertTrue(told.path("smallest_for_warm_up_w").asDouble() > 50, told.toString());
        String from = told.path("warm_ups").get(0).path("from").asText();
        assertTrue(from.compareTo("2025-01-05") <= 0 || from.compareTo("2025-02-02") >= 0, from);
        assertEquals(0, run("rest-hold", "hold", "--temperatures", "34"), program.err());
        assertFalse(program.out().contains("the calendar asks for 20.0 °C only"), program.out());
    }

    /** Indoors no weather makes the tank's winter harder, and no handbook's air does. */
    @Test
    void backupOfATankInARoomSpeaksOfTheRoom() throws IOException {
        Files.writeString(design, """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15, place: indoors, room_c: 12}
                envelope: {insulation_mm: 60}
                feed: {feedstocks: [{kg_per_day: 10}], temperature: room}
                control: {setpoint_c: 36}
                backup: {}
                gas: {}
                """);
        assertEquals(0, run("room", "backup"), program.err());
        assertTrue(program.out().contains("A handbook adds the steady loss in the room, 12.0 °C, "), program.out());
        assertTrue(program.out().contains("The room is taken at 12.0 °C whatever the weather"), program.out());
        assertFalse(program.out().contains("coldest week 10 K colder"), program.out());
        assertFalse(program.out().contains("Typical years"), program.out());
    }

    /** Where uses are given, what numbers nobody knows do to the answer is said of the useful net energy, and flared gas has no worth. */
    @Test
    void aYearWithUsesNamesUsefulNetEnergyAndWhatIsFlared() throws IOException {
        Files.writeString(design, """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                backup: {}
                gas: {holder: {useful_m3: 0.2}, uses: [{name: stove, kind: burner, kw: 0.1, efficiency: 0.5, hours: ["18:00-19:00"]}]}
                """);
        assertEquals(0, run("used", "year"), program.err());
        assertTrue(program.out().contains(": at 0.0216 the useful net energy is about "), program.out());
        assertFalse(program.out().contains(" the net energy is about "), program.out());
        assertTrue(
                program.out().contains("what finds no room in the holder is flared and brings nothing: take off "),
                program.out());
        JsonNode low = new ObjectMapper()
                .readTree(summary("used"))
                .path("sensitive")
                .get(0)
                .path("low");
        assertTrue(low.has("useful_net_energy_kwh"), low.toString());
        assertFalse(low.has("net_energy_kwh"), low.toString());
        assertEquals(0, run("used-holder", "holder"), program.err());
    }

    @Test
    void backupNamesAHeater() throws IOException {
        assertEquals(0, run("backup", "backup", "--sizes", "1000,250", "--ignore-sun"));
        assertTrue(program.out().contains("is the smallest that is enough"), program.out());
        assertTrue(program.out().contains("The solar circuit was left out of account."));
        assertTrue(summary("backup").contains("\"sun_ignored\" : true"));
        assertTrue(program.out().contains("For a coldest week 10 K colder take "), program.out());
        JsonNode told = new ObjectMapper().readTree(summary("backup"));
        assertTrue(told.at("/reserve/smallest_w").asDouble()
                > told.at("/smallest_w").asDouble());
        assertTrue(program.out().contains("What does it cost to be steady?"), program.out());
        assertTrue(told.at("/steadiness/steady_backup_heat_kwh").asDouble()
                >= told.at("/steadiness/backup_heat_kwh").asDouble());
    }

    /** A money's name alone makes no price: sums are told as examples, not in that money. */
    @Test
    void aCurrencyAloneRelabelsNoPrice() throws IOException {
        Files.writeString(design, """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                backup: {}
                gas: {}
                prices: {currency: crowns}
                """);
        for (String command : List.of("year", "backup", "hold")) {
            assertEquals(0, run(command + "-examples", command), program.err());
            assertFalse(program.out().contains("crowns"), program.out());
            assertTrue(program.out().contains("at example prices"), program.out());
        }
    }

    @Test
    void refusesAWindowThatTheFileDoesNotHold() {
        assertEquals(3, run("none", "carry"));
        assertTrue(program.err().contains("which does not hold 1 March to 31 May"));
        assertFalse(Files.exists(results("none")));
    }

    @Test
    void refusesWrongOptions() {
        assertEquals(2, run("none", "carry", "--from", "13-01"));
        assertTrue(program.err().contains("expected a day of the year as MM-DD"));
        assertEquals(2, run("none", "hold", "--from", "01-15", "--month", "1"));
        assertEquals(2, run("none", "backup", "--warm-up-days", "0"));
        assertTrue(program.err().contains("--warm-up-days 0, expected 1 to 365"));
        assertFalse(Files.exists(results("none")));
    }

    private void sameFiles(String one, String other) throws IOException {
        try (Stream<Path> files = Files.list(results(one))) {
            for (Path file : files.toList()) {
                Path twin = results(other).resolve(file.getFileName().toString());
                assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(twin), file.toString());
            }
        }
    }
}
