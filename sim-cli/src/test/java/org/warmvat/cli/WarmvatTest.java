package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.option.ExitCode;
import picocli.CommandLine;

class WarmvatTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void versionIsTheBuildsOwnAndGoesToStandardOutput() {
        assertEquals(ExitCode.DONE.number(), run("--version"));
        assertTrue(out.toString().matches("warmvat \\d+\\.\\d+\\.\\d+\\R"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void helpGoesToStandardOutput() {
        assertEquals(ExitCode.DONE.number(), run("--help"));
        assertTrue(out.toString().startsWith("Usage: warmvat "), out.toString());
    }

    @Test
    void noCommandIsWrongUse() {
        assertEquals(ExitCode.WRONG_USE.number(), run());
        assertTrue(
                err.toString().startsWith("No command is named, expected one such as check or year"), err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void anUnknownOptionIsWrongUse() {
        assertEquals(ExitCode.WRONG_USE.number(), run("--nonsense"));
        assertTrue(err.toString().startsWith("Unknown option: '--nonsense'"), err.toString());
    }

    @Test
    void whatIsNoFileNameIsToldInWords() {
        assertEquals(ExitCode.WRONG_USE.number(), run("year", "a\0b"));
        assertTrue(err.toString().contains("' is no name of a file on this machine"), err.toString());
        assertFalse(err.toString().contains("java"), err.toString());
    }

    @Test
    void whatIsNoFiniteNumberIsNone() {
        for (String text : List.of("-NaN", "Infinity", "1e999", "cold")) {
            err.getBuffer().setLength(0);
            assertEquals(ExitCode.WRONG_USE.number(), run("check", "tank.yaml", "--cold=" + text));
            assertTrue(err.toString().contains("'" + text + "' is no number"), err.toString());
        }
    }

    @Test
    void aStrayQuoteSpoilsOneValueOfAList() {
        assertEquals(ExitCode.WRONG_USE.number(), run("hold", "--temperatures", "20,3\",30"));
        assertTrue(err.toString().startsWith("Invalid value for option '--temperatures'"), err.toString());
        assertTrue(err.toString().contains("'3\"'"), err.toString());
    }

    private int run(String... args) {
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        return line.execute(args);
    }
}
