package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;

/** Runs the program as a process of its own, on Java machines set up in ways that cannot be had in this one. */
class ProcessTest {

    @TempDir
    private Path folder;

    @Test
    void answersAreUtf8WhateverTheMachineThinks() throws Exception {
        assertEquals(0, run(List.of("-Dfile.encoding=US-ASCII"), "check"));
        assertTrue(said("out").contains("At the set-point of 36.0 °C"), said("out"));
        assertEquals("", said("err"));
    }

    @Test
    void theExitCodeOfTheProcessIsThatOfTheCommand() throws Exception {
        assertEquals(2, run(List.of(), "year", "--engine", "steam"));
        assertEquals(3, run(List.of(), "check", "none.yaml"));
        assertEquals("none.yaml: no such file" + System.lineSeparator(), said("err"));
    }

    /** A device that is always full, where the system has one. */
    @Test
    void anAnswerThatStandardOutputDoesNotTakeIsNoAnswer() throws Exception {
        Path full = Path.of("/dev/full");
        Assumptions.assumeTrue(Files.exists(full));
        for (List<String> command : List.of(List.of("schema"), List.of("new"), List.of("check", "--json"))) {
            assertEquals(4, run(full, List.of(), command.toArray(new String[0])), command.toString());
            assertEquals(
                    "The run could not be completed: standard output did not take the answer" + System.lineSeparator(),
                    said("err"));
        }
    }

    @Test
    void aMachineThatCannotDrawStillGivesItsReport() throws Exception {
        Path design = Files.write(folder.resolve("d.yaml"), DesignDocument.demonstrationBytes());
        Path weather = Files.writeString(folder.resolve("w.csv"), YearCommandTest.weatherText(24));
        Path out = folder.resolve("results");
        List<String> withoutDesktop = List.of("--limit-modules", "java.logging,java.sql,java.naming,jdk.unsupported");
        int code = run(withoutDesktop, "year", design.toString(), weather.toString(), "--out", out.toString());
        assertEquals(0, code, said("err"));
        assertEquals(1, said("err").lines().count(), said("err"));
        assertTrue(said("err").startsWith("The pictures could not be drawn ("), said("err"));
        assertTrue(said("err").contains("apt-get install fontconfig"), said("err"));
        String report = Files.readString(out.resolve("report.html"));
        assertTrue(report.contains("The pictures could not be drawn"));
        assertFalse(Files.exists(out.resolve("tank_temperature.png")));
        assertTrue(Files.exists(out.resolve("summary.json")));
    }

    private int run(List<String> machine, String... args) throws IOException, InterruptedException {
        return run(folder.resolve("out.txt"), machine, args);
    }

    private int run(Path out, List<String> machine, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path")));
        command.addAll(machine);
        command.add("org.warmvat.cli.Warmvat");
        command.addAll(List.of(args));
        ProcessBuilder process = new ProcessBuilder(command);
        process.redirectOutput(out.toFile());
        process.redirectError(folder.resolve("err.txt").toFile());
        process.environment().remove("JAVA_TOOL_OPTIONS");
        return process.start().waitFor();
    }

    private String said(String stream) throws IOException {
        return Files.readString(folder.resolve(stream + ".txt"), StandardCharsets.UTF_8);
    }
}
