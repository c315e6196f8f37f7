package org.warmvat.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/** Runs the program with streams that a test can read; each run starts with empty ones. */
final class Program {

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    int run(String... args) {
        out = new StringWriter();
        err = new StringWriter();
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        return line.execute(args);
    }

    String out() {
        return out.toString();
    }

    String err() {
        return err.toString();
    }
}
