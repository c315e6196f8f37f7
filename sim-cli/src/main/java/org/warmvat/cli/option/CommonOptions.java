package org.warmvat.cli.option;

import picocli.CommandLine.Option;

/** Options that every command has. */
@SuppressWarnings("UnusedVariable") // help and trace are read by the argument parser and from the arguments
public class CommonOptions {

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and leave.")
    private boolean help;

    @Option(
            names = {"-q", "--quiet"},
            description = "No messages and no progress; answers and faults are still printed.")
    private boolean quiet;

    @Option(
            names = "--trace",
            description = "Show where the program broke down, if it does (also: WARMVAT_TRACE=1 in the environment).")
    private boolean trace;

    /** Whether only the answer is told. */
    public final boolean quiet() {
        return quiet;
    }
}
