package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The command vary. */
class VaryCommandTest extends ThreeWeeks {

    private Path vary(String name, String... more) throws IOException {
        Path target = folder.resolve(name);
        List<String> args = new ArrayList<>(List.of(
                "vary",
                demonstration().toString(),
                weather.toString(),
                "--set",
                "solar.area_m2=0:2:1",
                "--set",
                "envelope.wall.pir_foam.thickness_mm=90,120",
                "--out",
                target.toString()));
        args.addAll(List.of(more));
        assertEquals(0, program.run(args.toArray(new String[0])), program.err());
        return target;
    }

    /** Where uses are given only gas put to use is a return: with a small stove it is far below net energy and turns the answers. */
    @Test
    void whereUsesAreGivenUsefulNetEnergyJudgesAndNetEnergyStandsBeside() throws IOException {
        String design = withStove().toString();
        Path vary = folder.resolve("vary-stove");
        assertEquals(
                0,
                program.run("vary", design, weather.toString(), "--set", "solar.area_m2=1,2", "--out", vary.toString()),
                program.err());
        JsonNode told = new ObjectMapper().readTree(vary.resolve("summary.json").toFile());
        JsonNode run = told.path("runs").get(1);
        assertTrue(run.path("useful_net_energy_kwh").asDouble()
                < run.path("net_energy_kwh").asDouble() - 20);
        String verdict = told.path("verdict").path("sentence").asText();
        assertTrue(verdict.startsWith("The highest useful net energy is "), verdict);
        assertTrue(verdict.contains("(net energy "), verdict);
        assertTrue(Files.readString(vary.resolve("varied.svg")).contains("useful net energy, kWh over"));
        Path sizes = folder.resolve("sizes-stove");
        assertEquals(
                0,
                program.run("sizes", design, weather.toString(), "--litres", "150,900", "--out", sizes.toString()),
                program.err());
        JsonNode sized =
                new ObjectMapper().readTree(sizes.resolve("summary.json").toFile());
        assertEquals("useful_net_energy_kwh", sized.path("judged_by").asText());
        JsonNode large = sized.path("sizes").get(1);
        assertTrue(large.path("net_energy_kwh").asDouble() > 0);
        assertTrue(large.path("useful_net_energy_kwh").asDouble() < 0, large.toString());
        assertTrue(sized.path("smallest_positive_net_l").isNull(), sized.toString());
        assertTrue(
                sized.path("verdict").path("sentence").asText().contains("positive useful net energy"),
                sized.toString());
    }

    private static Set<String> names(Path results) throws IOException {
        try (Stream<Path> files = Files.list(results)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        }
    }

    @Test
    void shardsLaidEndToEndAreTheWholeAndThreadsDoNotMatter() throws IOException {
        Path one = vary("one", "--threads", "1", "--pareto", "outlay,backup_bought_kwh");
        Path three = vary("three", "--threads", "3", "--pareto", "outlay,backup_bought_kwh");
        assertEquals(names(one), names(three));
        for (String name : names(one)) {
            assertArrayEquals(Files.readAllBytes(one.resolve(name)), Files.readAllBytes(three.resolve(name)), name);
        }
        ByteArrayOutputStream joined = new ByteArrayOutputStream();
        for (int part = 1; part <= 4; part++) {
            joined.write(Files.readAllBytes(
                    vary("part" + part, "--shard", part + "/4").resolve("vary.csv")));
        }
        assertEquals(7, Files.readAllLines(one.resolve("vary.csv")).size());
        assertArrayEquals(Files.readAllBytes(one.resolve("vary.csv")), joined.toByteArray());
    }

    @Test
    void withoutCollectorThereIsNoSolarHeatAndMoreFoamNeverNeedsMoreHeat() throws IOException {
        List<String> lines = Files.readAllLines(vary("limits").resolve("vary.csv"));
        List<String> header = List.of(lines.get(0).split(","));
        int solar = header.indexOf("solar_heat_kwh");
        int wall = header.indexOf("envelope_loss_wall_kwh");
        assertEquals(7, lines.size());
        for (int row = 1; row < 7; row += 2) {
            String[] thin = lines.get(row).split(",", -1);
            String[] thick = lines.get(row + 1).split(",", -1);
            if (thin[0].equals("0")) {
                assertEquals("0", thin[solar]);
                assertEquals("0", thick[solar]);
            }
            // a third more foam; switching moves the loss by far less than the tenth left here
            assertTrue(Double.parseDouble(thick[wall]) < 0.9 * Double.parseDouble(thin[wall]), lines.get(row));
        }
    }

    @Test
    void wrongKeysValuesAndOutputsAreToldWithTheNearest() {
        assertEquals(3, program.run("vary", "--set", "solar.aera_m2=1,2", "--out", folder + "/none"));
        assertTrue(
                program.err().contains("solar.aera_m2 is not a known key, did you mean solar.area_m2?"), program::err);
        assertEquals(2, program.run("vary", "--set", "solar.area_m2=1:2", "--out", folder + "/none"));
        assertTrue(program.err().contains("solar.area_m2=1:2, expected from:to:step"), program::err);
        assertEquals(2, program.run("vary", "--show", "net_enery_kwh", "--out", folder + "/none"));
        assertTrue(program.err().contains("did you mean net_energy_kwh?"), program::err);
        assertEquals(2, program.run("vary", "--shard", "5/4", "--out", folder + "/none"));
        assertTrue(program.err().contains("--shard 5/4, expected a part such as 2/8"), program::err);
        assertEquals("", program.out());
        assertTrue(Files.notExists(folder.resolve("none")));
    }

    /** The outputs of a million runs do not fit into a small memory: it is said before the first of them. */
    @Test
    void moreRunsThanTheMemoryHoldsAreRefusedBeforeTheWork() {
        CommandLine line = Warmvat.commandLine();
        line.parseArgs("vary");
        VaryCommand vary = line.getSubcommands().get("vary").getCommand();
        vary.fits(20_000, 64L << 20);
        ParameterException refused = assertThrows(ParameterException.class, () -> vary.fits(25_000, 64L << 20));
        assertEquals(
                "25000 combinations, expected at most 22369 in a memory of 64 MB (java -Xmx4g gives more; --shard does them in parts)",
                refused.getMessage());
    }

    @Test
    void onePointIsNeitherBestNorWorst() throws IOException {
        String said = odd("vary", folder.resolve("point"), "--set", "envelope.insulation_mm=60");
        assertTrue(
                said.contains("1 design was run through the whole weather file: envelope.insulation_mm at 60."), said);
        assertTrue(said.contains("No gas is computed for this design, so that net energy cannot be judged."), said);
        assertFalse(said.contains("The net energy is"), said);
        assertTrue(said.contains("The tank is 504 hours below its minimum."), said);
        assertFalse(said.contains("Each run is"), said);
        assertFalse(said.contains("net energy, kWh"), said);
        assertTrue(said.contains("insulation, mm  solar heat, kWh"), said);
        // warnings have a lowest temperature of their own
        String answer = said.substring(0, said.indexOf("Warnings"));
        assertFalse(answer.contains("highest") || answer.contains("lowest"), said);
    }

    @Test
    void anOutputThatMeansNothingIsNeitherDrawnNorMarked() throws IOException {
        Path results = folder.resolve("nothing");
        String said = odd(
                "vary",
                results,
                "--set",
                "envelope.insulation_mm=60,60,90",
                "--show",
                "gas_energy_kwh",
                "--pareto",
                "backup_bought_kwh,outlay");
        assertTrue(said.contains("No picture is drawn of gas_energy_kwh, which means nothing for these designs"), said);
        assertTrue(said.contains("None is marked: backup_bought_kwh or outlay means nothing for these designs."), said);
        assertTrue(said.contains("No gas is computed for these designs, so that net energy cannot be judged."), said);
        assertTrue(said.contains("Each run is 504 hours below its minimum."), said);
        Set<String> own = new HashSet<>(names(results));
        own.removeIf(name -> name.startsWith("tank.") || name.startsWith("heat_loss."));
        assertEquals(Set.of("report.html", "summary.json", "vary.csv", "pareto.csv"), own);
    }

    @Test
    void equalPointsStandTogether() throws IOException {
        String said = odd(
                "vary",
                folder.resolve("equal"),
                "--set",
                "envelope.insulation_mm=60,60,90",
                "--pareto",
                "outlay,envelope_loss_wall_kwh");
        // the two of 60 mm, equal in both; the third costs more and, kept warmer, loses more
        assertTrue(
                said.contains(
                        "2 of 3 are best compromises: no other run does better in one and as well in the other of outlay"),
                said);
        assertEquals(2, program.run("vary", "--pareto", "outlay,outlay", "--out", folder + "/none"));
        assertTrue(program.err().contains("--pareto outlay,outlay, expected two different outputs"), program::err);
    }
}
