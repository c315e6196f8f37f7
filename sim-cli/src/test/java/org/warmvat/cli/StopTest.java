package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ctrl-C, as a signal to a process of its own, in the midst of each study: one line, the documented exit code, and nothing left.
 * When a study is under way is read from the names of its threads in {@code /proc}, so elsewhere than on Linux the test is skipped.
 */
class StopTest {

    private static final Path PROCESSES = Path.of("/proc");
    private static final int SIGINT_BIT = 1 << 1;

    @TempDir
    private Path folder;

    /** The reference engine takes minutes over each of these, so that the signal cannot come too late. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "vary --set solar.area_m2=0:100:1",
                "sizes --litres 200,400,600,800,1000,1200,1400,1600,1800,2000",
                "carry --from 01-02 --to 03-31",
                "backup",
                "hold --month 1"
            })
    void aStoppedStudyLeavesNothingBehind(String command) throws Exception {
        assumeTrue(Files.isDirectory(PROCESSES.resolve("self/task")), "no process folder here");
        Path out = folder.resolve("results");
        Process process = start(command + " --engine reference --out " + out);
        awaitStudy(process);
        assertEquals(List.of(), folderNames(), "nothing is written before the results are complete");
        interrupt(process);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it stops within a minute at the very most");
        assertEquals(4, process.exitValue());
        String said = Files.readString(folder.resolve("err.txt"));
        assertEquals(1, said.lines().count(), said);
        assertTrue(said.startsWith("The run could not be completed: stopped"), said);
        assertEquals("", Files.readString(folder.resolve("out.txt")));
        assertEquals(List.of(), folderNames());
    }

    /** Results that stand there already outlive a run that was to replace them. */
    @Test
    void aStoppedReplacementLeavesTheOldResults() throws Exception {
        assumeTrue(Files.isDirectory(PROCESSES.resolve("self/task")), "no process folder here");
        Path out = Files.createDirectory(folder.resolve("results"));
        Files.writeString(out.resolve("vary.csv"), "old");
        Files.writeString(out.resolve("summary.json"), """
                {"result_files": ["summary.json", "vary.csv"]}
                """);
        Process process = start("vary --set solar.area_m2=0:100:1 --engine reference --replace --out " + out);
        awaitStudy(process);
        interrupt(process);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        assertEquals(4, process.exitValue());
        assertEquals(List.of("results"), folderNames());
        assertEquals("old", Files.readString(out.resolve("vary.csv")));
    }

    private Process start(String command) throws IOException {
        List<String> words = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        words.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path")));
        words.add("org.warmvat.cli.Warmvat");
        words.addAll(List.of(command.split(" ")));
        ProcessBuilder process = new ProcessBuilder(words);
        process.redirectOutput(folder.resolve("out.txt").toFile());
        process.redirectError(folder.resolve("err.txt").toFile());
        process.environment().remove("JAVA_TOOL_OPTIONS");
        return process.start();
    }

    /** Waits until a thread of the study is there. */
    private void awaitStudy(Process process) throws Exception {
        Path threads = PROCESSES.resolve(process.pid() + "/task");
        while (!isStudying(threads)) {
            assertTrue(process.isAlive(), Files.readString(folder.resolve("err.txt")));
            Thread.sleep(20);
        }
    }

    private static boolean isStudying(Path threads) throws IOException {
        try (Stream<Path> each = Files.list(threads)) {
            for (Path thread : each.toList()) {
                if (name(thread).startsWith("study ")) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String name(Path thread) throws IOException {
        try {
            return Files.readString(thread.resolve("comm"));
        } catch (NoSuchFileException ended) {
            return "";
        }
    }

    /** Ctrl-C; where whoever started this test has it ignored, which children inherit, the signal of schedulers. */
    private static void interrupt(Process process) throws Exception {
        String signal = isIgnored(process) ? "-TERM" : "-INT";
        assertEquals(
                0,
                new ProcessBuilder("kill", signal, Long.toString(process.pid()))
                        .start()
                        .waitFor());
    }

    private static boolean isIgnored(Process process) throws IOException {
        return Files.readAllLines(PROCESSES.resolve(process.pid() + "/status")).stream()
                .filter(line -> line.startsWith("SigIgn:"))
                .anyMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & SIGINT_BIT) != 0);
    }

    private List<String> folderNames() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(entry -> entry.getFileName().toString())
                    .filter(name -> !name.equals("out.txt") && !name.equals("err.txt"))
                    .sorted()
                    .toList();
        }
    }
}
