package org.warmvat.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The program {@code warmvat}: one subcommand per question. */
@Command(
        name = "warmvat",
        description = "Says from hourly weather whether a small heated digester returns more energy than it eats.",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class)
public final class Warmvat implements Runnable {

    @Spec
    private CommandSpec spec;

    /** Runs the program and ends the process with an {@link ExitCode}. */
    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** The whole command line with its exit codes; the streams can be set by the caller. */
    public static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Warmvat());
        line.setExecutionExceptionHandler(Warmvat::ourFault);
        line.setExitCodeExceptionMapper(
                e -> (e instanceof ParameterException ? ExitCode.WRONG_USE : ExitCode.OUR_FAULT).number());
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command?");
    }

    private static int ourFault(Exception fault, CommandLine line, ParseResult parsed) {
        PrintWriter err = line.getErr();
        err.println("warmvat broke down, which is a fault of the program: " + fault);
        err.flush();
        return ExitCode.OUR_FAULT.number();
    }
}
