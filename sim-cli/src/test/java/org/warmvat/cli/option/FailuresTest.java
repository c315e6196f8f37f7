package org.warmvat.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.AccessDeniedException;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.Warmvat;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.engine.EngineFailure;
import org.warmvat.tank.StudyRefused;
import picocli.CommandLine;

class FailuresTest {

    @Test
    void refusedInputsPrintTheirFaultsAlone() {
        assertTold(3, "a line 1: x\na line 2: y\n", new InputRefused(List.of("a line 1: x", "a line 2: y")));
        assertTold(3, "ground: unknown\n", new StudyRefused(List.of("ground: unknown")));
    }

    @Test
    void aRunThatCouldNotBeCompletedSaysWhy() {
        assertTold(4, "The run could not be completed: hour 12: no step\n", new EngineFailure("hour 12: no step"));
        assertTold(
                4,
                "The run could not be completed: stopped at hour 3\n",
                new CancellationException("stopped at hour 3"));
    }

    @Test
    void resultsThatCouldNotBeWrittenSayWhy() {
        assertTold(4, "The results could not be written: no space left\n", new IOException("no space left"));
        assertTold(4, "The results could not be written: /out may not be written\n", new AccessDeniedException("/out"));
    }

    @Test
    void aFaultOfOursIsOneLineUnlessATraceIsAskedFor() {
        assertTold(
                1,
                "warmvat broke down, which is a fault of the program: java.lang.IllegalStateException: odd (again with"
                        + " --trace shows where)\n",
                new IllegalStateException("odd"));
        String traced = told(1, new IllegalStateException("odd"), "check", "--trace");
        assertTrue(
                traced.startsWith(
                        "warmvat broke down, which is a fault of the program: java.lang.IllegalStateException: odd\n"
                                + "java.lang.IllegalStateException: odd\n\tat org.warmvat.cli.option.FailuresTest"),
                traced);
    }

    private static void assertTold(int code, String message, Exception failure) {
        assertEquals(message, told(code, failure, "check"));
    }

    private static String told(int code, Exception failure, String... args) {
        StringWriter err = new StringWriter();
        CommandLine line = Warmvat.commandLine();
        line.setErr(new PrintWriter(err, true));
        assertEquals(code, Failures.handle(failure, line, line.parseArgs(args)));
        return err.toString();
    }
}
