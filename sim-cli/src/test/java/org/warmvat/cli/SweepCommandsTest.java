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
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Inputs;
import org.warmvat.weather.file.WeatherFiles;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** The commands vary, sizes and new, on three weeks of the built-in weather. */
class SweepCommandsTest {

    private static final int HOURS = 21 * 24;

    @TempDir
    static Path folder;

    private static Path weather;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeAll
    static void cutWeather() throws IOException {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long head = lines.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        weather = folder.resolve("three-weeks.csv");
        Files.write(weather, lines.subList(0, (int) head + HOURS));
    }

    private int run(String... args) {
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        return line.execute(args);
    }

    private static Path demonstration() throws IOException {
        Path file = folder.resolve("demonstration.yaml");
        return Files.write(file, DesignDocument.demonstrationBytes());
    }

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
        assertEquals(0, run(args.toArray(new String[0])), err.toString());
        return target;
    }

    /** The demonstration with a holder and a stove that burns a fifth of what is made. */
    private static Path withStove() throws IOException {
        String design = Files.readString(demonstration());
        assertTrue(design.contains("\ngas:\n"), design);
        return Files.writeString(
                folder.resolve("stove.yaml"),
                design.replace(
                        "\ngas:\n",
                        "\ngas:\n  holder: {useful_m3: 0.5}\n  uses:\n    - {name: stove, kind: burner, kw: 0.8, efficiency: 0.5,"
                                + " hours: [\"18:00-19:00\"]}\n"));
    }

    /** Where uses are given only gas put to use is a return: with a small stove it is far below net energy and turns the answers. */
    @Test
    void whereUsesAreGivenUsefulNetEnergyJudgesAndNetEnergyStandsBeside() throws IOException {
        String design = withStove().toString();
        Path vary = folder.resolve("vary-stove");
        assertEquals(
                0,
                run("vary", design, weather.toString(), "--set", "solar.area_m2=1,2", "--out", vary.toString()),
                err.toString());
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
                run("sizes", design, weather.toString(), "--litres", "150,900", "--out", sizes.toString()),
                err.toString());
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
        assertEquals(3, run("vary", "--set", "solar.aera_m2=1,2", "--out", folder + "/none"));
        assertTrue(
                err.toString().contains("solar.aera_m2 is not a known key, did you mean solar.area_m2?"),
                err::toString);
        assertEquals(2, run("vary", "--set", "solar.area_m2=1:2", "--out", folder + "/none"));
        assertTrue(err.toString().contains("solar.area_m2=1:2, expected from:to:step"), err::toString);
        assertEquals(2, run("vary", "--show", "net_enery_kwh", "--out", folder + "/none"));
        assertTrue(err.toString().contains("did you mean net_energy_kwh?"), err::toString);
        assertEquals(2, run("vary", "--shard", "5/4", "--out", folder + "/none"));
        assertTrue(err.toString().contains("--shard 5/4, expected a part such as 2/8"), err::toString);
        assertEquals("", out.toString());
        assertTrue(Files.notExists(folder.resolve("none")));
    }

    @Test
    void sizesOfTheOwnVolumeLeaveTheDesignAsItIs() throws IOException {
        Path target = folder.resolve("sizes");
        int code = run(
                "sizes",
                demonstration().toString(),
                weather.toString(),
                "--litres",
                "450,903.2078879",
                "--out",
                target.toString(),
                "--scale",
                "mixer.torque_nm=fixed");
        assertEquals(0, code, err.toString());
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
                out.toString().contains("The smallest of these sizes with a positive net energy over the run is"),
                out::toString);
    }

    /** The sizes sought between those of the list are drawn, too, lest the line cross nothing elsewhere than the verdict says. */
    @Test
    void theLineCrossesNothingWhereTheVerdictSaysSo() throws IOException {
        Path target = folder.resolve("crossing");
        int code = run(
                "sizes",
                demonstration().toString(),
                weather.toString(),
                "--litres",
                "60,3000",
                "--out",
                target.toString());
        assertEquals(0, code, err.toString());
        // three weeks hold one month, so that both verdicts may name one size
        long changes = Pattern.compile("the change comes at about \\S+")
                .matcher(out.toString())
                .results()
                .map(MatchResult::group)
                .distinct()
                .count();
        assertTrue(changes > 0, out::toString);
        String svg = Files.readString(target.resolve("net_by_size.svg"));
        // on both lines a dot for each of both sizes and each change, and one in the legend
        assertEquals(2 * (2 + changes + 1), svg.split("d=\"M[^\"]* C", -1).length - 1);
        assertEquals(3, Files.readAllLines(target.resolve("sizes.csv")).size());
    }

    private static Path withoutGas() throws IOException {
        return Files.writeString(folder.resolve("without-gas.yaml"), """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
                envelope: {insulation: pir_foam, insulation_mm: 90}
                feed: {feedstocks: [{kg_per_day: 10}]}
                control: {setpoint_c: 36}
                """);
    }

    /** Sees what a sweep or a scaling of a design without heater and gas says, and which pictures it draws. */
    private String odd(String command, Path results, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of(
                command, withoutGas().toString(), weather.toString(), "--replace", "--out", results.toString()));
        args.addAll(List.of(more));
        assertEquals(0, run(args.toArray(new String[0])), err.toString());
        assertFalse(out.toString().contains("NaN"), out::toString);
        return out.toString();
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
        assertEquals(2, run("vary", "--pareto", "outlay,outlay", "--out", folder + "/none"));
        assertTrue(err.toString().contains("--pareto outlay,outlay, expected two different outputs"), err::toString);
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
        int code = run(
                "sizes",
                design.toString(),
                weather.toString(),
                "--litres",
                litres,
                "--replace",
                "--out",
                results.toString());
        assertEquals(0, code, err.toString());
        return new ObjectMapper().readTree(Files.readString(results.resolve("summary.json")));
    }

    @Test
    void sizesThatNoTankCanHaveAreRefusedTogetherAndBriefly() {
        assertEquals(3, run("sizes", "--litres", "1,300,2000000000", "--out", folder + "/none"));
        List<String> faults = err.toString().lines().toList();
        assertEquals(
                "built-in demonstration: at 1 litres: tank.inner_diameter_m 0.10345165101603397, expected a number, 0.2 to"
                        + " 20 m",
                faults.get(0));
        assertTrue(
                faults.get(faults.size() - 1).startsWith("built-in demonstration: at 2000000000 litres: "),
                faults.toString());
        assertEquals(2, run("sizes", "--litres", "-5,100", "--out", folder + "/none"));
        assertTrue(err.toString().contains("--litres -5, expected 0.1 to 10000000000"), err::toString);
    }

    @Test
    void newWritesAFileOnceAndCheckLikesIt() throws IOException {
        Path file = folder.resolve("starter.yaml");
        assertEquals(0, run("new", file.toString(), "--litres", "300", "--setpoint", "30"), err.toString());
        assertEquals(2, run("new", file.toString()));
        assertTrue(err.toString().contains("stands there already, expected --replace or another name"), err::toString);
        assertEquals(2, run("new", "--litres", "1"));
        assertTrue(err.toString().contains("--litres 1, expected 20 to 100000"), err::toString);
        assertEquals(0, run("check", file.toString()), err.toString());
        assertTrue(
                out.toString().contains("Starter design, 300 litres at 30 °C: what follows from the design"),
                out::toString);
    }

    @Test
    void newAlsoSpeaksJsonAndAllThreeAreTheSameDesign() throws IOException {
        Path yaml = folder.resolve("again.yaml");
        Path json = folder.resolve("again.json");
        assertEquals(0, run("new", yaml.toString(), "--litres", "300", "--quiet"), err.toString());
        assertEquals("", out.toString());
        assertEquals(0, run("new", json.toString(), "--litres", "300", "--json"), err.toString());
        assertEquals(Files.readString(json), out.toString());
        assertEquals(
                DesignDocument.read(yaml.toString(), Inputs.bytes(yaml)).design(),
                DesignDocument.read(json.toString(), Inputs.bytes(json)).design());
    }
}
