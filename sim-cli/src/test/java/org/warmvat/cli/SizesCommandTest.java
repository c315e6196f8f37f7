package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The command sizes. */
class SizesCommandTest extends ThreeWeeks {

    @Test
    void sizesOfTheOwnVolumeLeaveTheDesignAsItIs() throws IOException {
        Path target = folder.resolve("sizes");
        int code = program.run(
                "sizes",
                demonstration().toString(),
                weather.toString(),
                "--litres",
                "450,903.2078879",
                "--out",
                target.toString(),
                "--scale",
                "mixer.torque_nm=fixed");
        assertEquals(0, code, program.err());
        List<String> lines = Files.readAllLines(target.resolve("sizes.csv"));
        List<String> header = List.of(lines.get(0).split(","));
        String[] half = lines.get(1).split(",", -1);
        String[] own = lines.get(2).split(",", -1);
        // files have six figures
        assertEquals(1.00, Double.parseDouble(own[header.indexOf("tank.inner_diameter_m")]), 1e-5);
        assertEquals(2.0, Double.parseDouble(own[header.indexOf("solar.area_m2")]), 1e-5);
        assertEquals(60, Double.parseDouble(half[header.indexOf("mixer.torque_nm")]), 0);
        assertEquals(10 * 450 / 903.2078879, Double.parseDouble(half[header.indexOf("feed.water.kg_per_day")]), 1e-5);
        assertTrue(
                program.out().contains("The smallest of these sizes with a positive net energy over the run is"),
                program::out);
    }

    /** The sizes sought between those of the list are drawn, too, lest the line cross nothing elsewhere than the verdict says. */
    @Test
    void theLineCrossesNothingWhereTheVerdictSaysSo() throws IOException {
        Path target = folder.resolve("crossing");
        int code = program.run(
                "sizes",
                demonstration().toString(),
                weather.toString(),
                "--litres",
                "60,3000",
                "--out",
                target.toString());
        assertEquals(0, code, program.err());
        // three weeks hold one month, so that both verdicts may name one size
        long changes = Pattern.compile("the change comes at about \\S+")
                .matcher(program.out())
                .results()
                .map(MatchResult::group)
                .distinct()
                .count();
        assertTrue(changes > 0, program::out);
        String svg = Files.readString(target.resolve("net_by_size.svg"));
        // on both lines a dot for each of both sizes and each change, and one in the legend
        assertEquals(2 * (2 + changes + 1), svg.split("d=\"M[^\"]* C", -1).length - 1);
        assertEquals(3, Files.readAllLines(target.resolve("sizes.csv")).size());
    }

    @Test
    void aSizeWithoutGasEatsNoneAndIsFedNothing() throws IOException {
        String said = odd("sizes", folder.resolve("no-gas"), "--litres", "900,300,900");
        assertTrue(
                said.contains("No gas is computed for this design, so that no size can be said to pay its way."), said);
        assertTrue(said.contains("heater and machinery take"), said);
        assertFalse(said.contains("The need of heat is"), said);
        assertEquals(3, Files.readAllLines(folder.resolve("no-gas/sizes.csv")).size());
    }

    /**
     * The size found between two is run again, and 1 % to either side: the net energy changes its sign there. The tank stands in a
     * warm room and has no heater, so that no thermostat stirs the figures of such near sizes.
     */
    @Test
    void theSizeThatFirstPaysItsWayIsWhereItIsSaidToBe() throws IOException {
        Path design = Files.writeString(folder.resolve("warm-room.yaml"), """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15, place: indoors, room_c: 30}
                envelope: {insulation: pir_foam, insulation_mm: 50}
                feed: {feedstocks: [{kg_per_day: 10}], temperature: room}
                control: {setpoint_c: 30}
                gas: {}
                """);
        double found = sizes(design, "10,1000").path("net_changes_sign_at_l").asDouble();
        assertTrue(found > 10 && found < 1000, "between the two: " + found);
        List<Double> net = new ArrayList<>();
        sizes(design, 0.99 * found + "," + found + "," + 1.01 * found)
                .path("sizes")
                .forEach(size -> net.add(size.path("net_energy_kwh").asDouble()));
        assertTrue(net.get(0) <= 0 && net.get(1) > 0 && net.get(2) > 0, net.toString());
    }

    private JsonNode sizes(Path design, String litres) throws IOException {
        Path results = folder.resolve("sought");
        int code = program.run(
                "sizes",
                design.toString(),
                weather.toString(),
                "--litres",
                litres,
                "--replace",
                "--out",
                results.toString());
        assertEquals(0, code, program.err());
        return new ObjectMapper().readTree(Files.readString(results.resolve("summary.json")));
    }

    @Test
    void sizesThatNoTankCanHaveAreRefusedTogetherAndBriefly() {
        assertEquals(3, program.run("sizes", "--litres", "1,300,2000000000", "--out", folder + "/none"));
        List<String> faults = program.err().lines().toList();
        assertEquals(
                "built-in demonstration: at 1 litres: tank.inner_diameter_m 0.10345165101603397, expected a number, 0.2 to"
                        + " 20 m",
                faults.get(0));
        assertTrue(
                faults.get(faults.size() - 1).startsWith("built-in demonstration: at 2000000000 litres: "),
                faults.toString());
        assertEquals(2, program.run("sizes", "--litres", "-5,100", "--out", folder + "/none"));
        assertTrue(program.err().contains("--litres -5, expected 0.1 to 10000000000"), program::err);
    }
}
