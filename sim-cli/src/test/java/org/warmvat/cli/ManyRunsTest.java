package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.weather.file.WeatherFiles;

/** Studies that are killed and gone on with, or done in parts, give the bytes of an unbroken run. */
class ManyRunsTest {

    private static final int HOURS = 7 * 24;

    @TempDir
    Path folder;

    private final Program program = new Program();

    @BeforeEach
    void inputs() throws IOException {
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long head = lines.stream().takeWhile(line -> !line.matches("[0-9].*")).count();
        Files.write(folder.resolve("w.csv"), lines.subList(0, (int) head + HOURS));
        Files.writeString(folder.resolve("d.yaml"), """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2}
                envelope: {insulation_mm: 120}
                control: {setpoint_c: 36}
                feed: {feedstocks: [{kg_per_day: 10}]}
                solar: {area_m2: 4}
                backup: {rated_w: 900}
                gas: {}
                """);
        Files.writeString(folder.resolve("c.yaml"), """
                choose:
                  solar.area_m2: {values: [0, 1, 2], price_per_m2: 300}
                  backup.rated_w: {values: [100, 900], price_each: 40}
                limits: {hours_below_floor: 1}
                """);
    }

    private List<String> words(String command, String out) {
        List<String> words = new ArrayList<>();
        for (String word : (command + " --out " + out).split(" ")) {
            boolean file = word.matches("[dwc]\\.(yaml|csv)") || word.equals(out);
            words.add(file ? folder.resolve(word).toString() : word);
        }
        return words;
    }

    private int run(String command, String out) {
        return program.run(words(command, out).toArray(new String[0]));
    }

    private void assertSame(String expected, String actual) throws IOException {
        List<String> names = names(folder.resolve(expected));
        assertEquals(names, names(folder.resolve(actual)));
        for (String name : names) {
            assertArrayEquals(
                    Files.readAllBytes(folder.resolve(expected).resolve(name)),
                    Files.readAllBytes(folder.resolve(actual).resolve(name)),
                    name);
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** Some hundred designs. */
    private void manyChoices() throws IOException {
        String values = IntStream.range(0, 40).mapToObj(i -> 1 + i * 0.1 + "").collect(Collectors.joining(", "));
        Files.writeString(folder.resolve("c.yaml"), """
                choose:
                  solar.area_m2: {values: [%s], price_per_m2: 300}
                  backup.rated_w: {values: [300, 400, 500, 600, 700, 800], price_each: 40}
                  envelope.insulation_mm: {values: [80, 120], price_per_m2_mm: 0.3}
                limits: {hours_below_floor: 1}
                """.formatted(values));
    }

    /** Killed without a chance to clear up, the last entry torn; gone on with on another number of threads. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "vary d.yaml w.csv --set solar.area_m2=0:5:0.005 --show methane_nm3",
                "choose d.yaml c.yaml w.csv",
                "spread d.yaml w.csv --draws 100"
            })
    void aKilledStudyGoesOnWhereItWas(String command) throws Exception {
        manyChoices();
        Path journal = folder.resolve("killed.runs");
        Process process = start(words(command + " --threads 1", "killed"));
        while (!Files.exists(journal) || Files.size(journal) < 10_000) {
            assertTrue(process.isAlive(), Files.readString(folder.resolve("err.txt")));
            Thread.sleep(5);
        }
        process.destroyForcibly().waitFor();
        assertFalse(Files.exists(folder.resolve("killed")));
        long size = Files.size(journal);
        try (RandomAccessFile torn = new RandomAccessFile(journal.toFile(), "rw")) {
            torn.setLength(size - 3);
        }
        assertEquals(3, run(command, "killed"));
        assertTrue(
                program.err().contains("expected --resume to go on from them, or --replace to begin anew"),
                program.err());
        assertEquals(0, run(command + " --resume --threads 2", "killed"), program.err());
        int before = Integer.parseInt(program.err().replaceAll("(?s)^([0-9]+) runs that were done before.*", "$1"));
        assertTrue(before > 0 && before < 1001, program.err());
        assertFalse(Files.exists(journal), "it goes with the results");
        assertEquals(0, run(command + " --threads 3", "whole"), program.err());
        assertSame("whole", "killed");
    }

    @Test
    void runsOfOtherInputsAreNotGoneOnWith() throws IOException {
        String vary = "vary d.yaml w.csv --set solar.area_m2=0,1 --shard 1/2";
        assertEquals(0, run(vary, "part"), program.err());
        Files.copy(folder.resolve("part").resolve("part.runs"), folder.resolve("again.runs"));
        assertEquals(3, run(vary.replace("0,1", "0,2") + " --resume", "again"));
        assertTrue(program.err().contains("holds runs of other inputs, options or another version"), program.err());
        assertEquals(0, run(vary + " --resume", "again"), program.err());
    }

    /** In one year, and in two, where a part holds runs of both. */
    @ParameterizedTest
    @ValueSource(strings = {"w.csv", "w.csv w.csv"})
    void partsOfASweepMakeTheWhole(String weather) throws IOException {
        String vary = "vary d.yaml " + weather
                + " --set solar.area_m2=0:3:0.5 --set backup.rated_w=300,900 --pareto outlay,backup_bought_kwh";
        assertEquals(0, run(vary, "whole"), program.err());
        for (String part : List.of("3", "1", "2")) {
            assertEquals(0, run(vary + " --shard " + part + "/3", "part" + part), program.err());
        }
        assertEquals(0, merge("merged", "part1", "part2", "part3"), program.err());
        assertSame("whole", "merged");
    }

    @Test
    void partsOfAChoiceMakeTheWhole() throws IOException {
        String choose = "choose d.yaml c.yaml w.csv";
        assertEquals(0, run(choose, "whole"), program.err());
        assertEquals(0, run(choose + " --shard 1/2", "part1"), program.err());
        assertEquals(0, run(choose + " --shard 2/2", "part2"), program.err());
        assertEquals(0, merge("merged", "part2", "part1"), program.err());
        assertSame("whole", "merged");
    }

    @Test
    void partsOfASpreadMakeTheWhole() throws IOException {
        String spread = "spread d.yaml w.csv --draws 8";
        assertEquals(0, run(spread, "whole"), program.err());
        assertEquals(0, run(spread + " --shard 1/2", "part1"), program.err());
        assertEquals(0, run(spread + " --shard 2/2", "part2"), program.err());
        assertEquals(0, merge("merged", "part1", "part2"), program.err());
        assertSame("whole", "merged");
    }

    @Test
    void partsThatDoNotBelongTogetherAreRefused() throws IOException {
        String vary = "vary d.yaml w.csv --set solar.area_m2=0,1";
        assertEquals(0, run(vary + " --shard 1/2", "one"), program.err());
        assertEquals(0, run(vary + ",2 --shard 2/2", "other"), program.err());
        assertEquals(3, merge("none", "one"));
        assertEquals(
                "part 2/2 is missing, expected the folders of all 2",
                program.err().strip());
        assertEquals(3, merge("none", "one", "one"));
        assertTrue(program.err().contains("is part 1 again, expected each once"), program.err());
        assertEquals(3, merge("none", "one", "other"));
        assertTrue(program.err().contains("is a part of another study than"), program.err());
        assertEquals(0, run(vary + " --shard 2/2", "two"), program.err());
        Files.writeString(
                folder.resolve("d.yaml"),
                Files.readString(folder.resolve("d.yaml")).replace("area_m2: 4", "area_m2: 5"));
        assertEquals(3, merge("none", "one", "two"));
        assertTrue(program.err().contains("holds runs of other inputs"), program.err());
        assertEquals(3, merge("none", "nowhere"));
        assertTrue(program.err().contains("part.runs: cannot be read as runs that were kept"), program.err());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    private int merge(String out, String... parts) {
        List<String> words = new ArrayList<>(List.of("merge"));
        Arrays.stream(parts).forEach(part -> words.add(folder.resolve(part).toString()));
        words.addAll(List.of("--out", folder.resolve(out).toString()));
        return program.run(words.toArray(new String[0]));
    }

    private Process start(List<String> words) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path")));
        command.add("org.warmvat.cli.Warmvat");
        command.addAll(words);
        ProcessBuilder process = new ProcessBuilder(command);
        process.redirectOutput(folder.resolve("out.txt").toFile());
        process.redirectError(folder.resolve("err.txt").toFile());
        process.environment().remove("JAVA_TOOL_OPTIONS");
        return process.start();
    }
}
