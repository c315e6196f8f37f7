package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The faults of all inputs of a command are told at once, and nothing is written. */
class InputFaultsTest {

    private static final String DESIGN = """
            tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
            envelope: {insulation: pir_foam, insulation_mm: 90}
            feed: {feedstocks: [{kg_per_day: 10}]}
            control: {setpoint_c: 36}
            solar: {area_m2: AREA}
            backup: {rated_w: 500}
            """;

    @TempDir
    private Path folder;

    private final Program program = new Program();
    private Path good;
    private Path bad;
    private Path badDesign;

    @BeforeEach
    void write() throws IOException {
        String hours = YearCommandTest.weatherText(24);
        good = Files.writeString(folder.resolve("good.csv"), hours);
        bad = Files.writeString(folder.resolve("bad.csv"), hours.replace("T05:00,4.0", "T05:00,warm"));
        badDesign = Files.writeString(folder.resolve("bad.yaml"), DESIGN.replace("AREA", "-1"));
    }

    private List<String> refused(String command, Object... inputs) {
        Path out = folder.resolve("out");
        List<String> args = new ArrayList<>(List.of(command));
        for (Object input : inputs) {
            args.add(input.toString());
        }
        args.addAll(List.of("--out", out.toString()));
        assertEquals(3, program.run(args.toArray(String[]::new)), program.err());
        assertEquals("", program.out());
        assertFalse(Files.exists(out));
        return program.err().lines().toList();
    }

    private String inDesign() {
        return badDesign + " line 5: solar.area_m2 -1, expected a number, 0 to 1000 m2";
    }

    private String inWeather() {
        return bad + " line 14: air_c \"warm\", expected ";
    }

    @ParameterizedTest
    @ValueSource(strings = {"year", "carry", "backup", "hold", "vary", "sizes"})
    void thoseOfDesignAndWeatherComeTogether(String command) {
        List<String> faults = refused(command, badDesign, bad);
        assertEquals(2, faults.size(), faults.toString());
        assertEquals(inDesign(), faults.get(0));
        assertTrue(faults.get(1).startsWith(inWeather()), faults.get(1));
    }

    @Test
    void thoseOfALaterWeatherFileComeWithTheRest() {
        List<String> faults = refused("backup", badDesign, good, bad, "none.csv", bad);
        assertEquals(4, faults.size(), faults.toString());
        assertEquals(inDesign(), faults.get(0));
        assertTrue(faults.get(1).startsWith(inWeather()), faults.get(1));
        assertEquals("none.csv: no such file", faults.get(2));
        assertEquals(faults.get(1), faults.get(3));
    }

    @Test
    void thoseOfALayoutAreToldOnceAndMissingFilesWithThem() throws IOException {
        Path layout = Files.writeString(folder.resolve("layout.yaml"), "delimiter: oops\n");
        List<String> faults = refused("backup", badDesign, good, "none.csv", "--layout", layout);
        assertEquals(inDesign(), faults.get(0));
        assertTrue(faults.get(1).startsWith(layout.toString()), faults.toString());
        assertEquals("none.csv: no such file", faults.get(faults.size() - 1));
        assertEquals(faults.size(), faults.stream().distinct().count(), faults.toString());
    }

    @Test
    void thoseOfAnAxisOrARuleComeWithThoseOfTheWeather() throws IOException {
        Path design = Files.writeString(folder.resolve("good.yaml"), DESIGN.replace("AREA", "2"));
        List<String> axis = refused("vary", design, bad, "--set", "solar.aera_m2=1,2");
        assertEquals(
                design + ": solar.aera_m2 is not a known key, did you mean solar.area_m2?",
                axis.get(0),
                axis.toString());
        assertTrue(axis.get(1).startsWith(inWeather()), axis.toString());
        List<String> rule = refused("sizes", design, bad, "--scale", "solar.aera_m2=1");
        assertTrue(rule.get(0).contains("did you mean solar.area_m2?"), rule.toString());
        assertTrue(rule.get(1).startsWith(inWeather()), rule.toString());
    }

    /** A tank on the ground needs a ground temperature; each weather file that has none is named. */
    @Test
    void aDesignThatDoesNotGoWithSomeOfTheWeatherFilesNamesThem() throws IOException {
        Path design = Files.writeString(
                folder.resolve("ground.yaml"),
                DESIGN.replace("AREA", "2").replace("1.15}", "1.15, stands_on: ground}"));
        Path eightDays = Files.writeString(folder.resolve("eight-days.csv"), YearCommandTest.weatherText(192));
        List<String> faults = refused("backup", design, eightDays, eightDays);
        assertEquals(2, faults.size(), faults.toString());
        assertTrue(faults.get(0).startsWith("weather file 1 of 2: ground: nothing tells"), faults.get(0));
        assertTrue(faults.get(1).startsWith("weather file 2 of 2: ground: nothing tells"), faults.get(1));
    }
}
