package org.warmvat.cli.option;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.answer.folder.ResultsRefused;
import org.warmvat.cli.answer.folder.WholeFile;
import org.warmvat.cli.words.Numerals;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Options that every command has, and how it speaks. */
@SuppressWarnings("UnusedVariable") // help and trace are read by the argument parser and from the arguments
public class CommonOptions {

    @Spec(Target.MIXEE)
    private CommandSpec spec;

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

    /** The command that is asked. */
    public final CommandSpec spec() {
        return spec;
    }

    /** Whether only the answer is told. */
    public final boolean quiet() {
        return quiet;
    }

    /** Prints what was asked for. */
    public final void print(String text) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text);
        out.flush();
    }

    /** Messages that are no answer; none when all is to be quiet. */
    public final void tell(String message) {
        if (!quiet) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(TerminalText.harmless(message));
            err.flush();
        }
    }

    /** A fault of the command line. */
    public final ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    /** What an option means; refused where it means nothing. */
    public final <T> T wanted(Supplier<T> meaning) {
        try {
            return meaning.get();
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage(), wrong);
        }
    }

    /** Refuses a number of an option that lies outside its limits. */
    public final void within(String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw wrong(option + " " + Numerals.exact(value) + ", expected " + Numerals.exact(least) + " to "
                    + Numerals.exact(most));
        }
    }

    /** A file to write, where its place is free or may be replaced. */
    public final WholeFile free(Path place, boolean replace) {
        try {
            return WholeFile.at(place, replace);
        } catch (ResultsRefused refused) {
            throw new ParameterException(spec.commandLine(), refused.getMessage(), refused);
        }
    }
}
