package org.warmvat.cli.option;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.channels.ClosedByInterruptException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.warmvat.account.LedgerOpen;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.answer.folder.ResultsRefused;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.design.keys.Refused;
import org.warmvat.engine.EngineFailure;
import org.warmvat.regression.FitFailure;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.WeatherRefused;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns whatever ends a command early into messages and an exit code; a stack trace only on request. */
public final class Failures {

    private static final String TRACE_VARIABLE = "WARMVAT_TRACE";

    private Failures() {}

    /** Tells in a line what ended the command, and gives its exit code. */
    public static int handle(Exception failure, CommandLine line, ParseResult parsed) {
        Optional<List<String>> refused = refused(failure);
        if (refused.isPresent()) {
            return told(line, refused.get(), ExitCode.INPUT_REFUSED);
        }
        if (failure instanceof ResultsRefused) {
            return told(line, List.of(failure.getMessage()), ExitCode.WRONG_USE);
        }
        if (failure instanceof EngineFailure
                || failure instanceof FitFailure
                || failure instanceof LedgerOpen
                || failure instanceof CancellationException) {
            String fact = "The run could not be completed: " + failure.getMessage();
            return told(line, List.of(fact), ExitCode.RUN_NOT_COMPLETED);
        }
        if (failure instanceof ClosedByInterruptException) {
            return told(line, List.of("The run could not be completed: stopped"), ExitCode.RUN_NOT_COMPLETED);
        }
        if (failure instanceof IOException unwritten) {
            String fact = "The results could not be written: " + reason(unwritten);
            return told(line, List.of(fact), ExitCode.RUN_NOT_COMPLETED);
        }
        return ourFault(failure, line, parsed);
    }

    /** Faults of an input that was refused, one sentence each; empty where the failure is another. */
    public static Optional<List<String>> refused(Throwable failure) {
        if (failure instanceof InputRefused refused) {
            return Optional.of(refused.faults());
        }
        if (failure instanceof Refused refused) {
            return Optional.of(
                    refused.faults().stream().map(Refused.Fault::toString).toList());
        }
        if (failure instanceof StudyRefused refused) {
            return Optional.of(refused.faults());
        }
        return failure instanceof WeatherRefused refused ? Optional.of(refused.faults()) : Optional.empty();
    }

    /** The message of an I/O failure is often a bare path; its type then says what is wrong with it. */
    private static String reason(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return failure.getMessage() + " may not be written";
        }
        if (failure instanceof NoSuchFileException) {
            return failure.getMessage() + " is not there";
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof DirectoryNotEmptyException) {
            return failure.getMessage() + " stands there already";
        }
        return failure.getMessage();
    }

    /** Tells that the memory is too little. */
    public static int tooLittleMemory(CommandLine line) {
        long megabytes = Runtime.getRuntime().maxMemory() >> 20;
        String fact = "The run could not be completed: the memory of " + megabytes
                + " MB is too little for it; java -Xmx4g gives more, and fewer or smaller inputs take less";
        return told(line, List.of(fact), ExitCode.RUN_NOT_COMPLETED);
    }

    /** Tells of a fault of the program, and where it is if asked. */
    public static int ourFault(Throwable fault, CommandLine line, ParseResult parsed) {
        boolean traced =
                System.getenv(TRACE_VARIABLE) != null || parsed.originalArgs().contains("--trace");
        PrintWriter err = line.getErr();
        err.println("warmvat broke down, which is a fault of the program: " + fault
                + (traced ? "" : " (again with --trace shows where)"));
        if (traced) {
            fault.printStackTrace(err);
        }
        err.flush();
        return ExitCode.OUR_FAULT.number();
    }

    /** What is wrong with the command line, what may have been meant, and where to read on. */
    public static int wrongUse(ParameterException wrong, String[] args) {
        CommandLine line = wrong.getCommandLine();
        PrintWriter err = line.getErr();
        err.println(TerminalText.harmless(wrong.getMessage()));
        UnmatchedArgumentException.printSuggestions(wrong, err);
        err.println("See " + line.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return ExitCode.WRONG_USE.number();
    }

    private static int told(CommandLine line, List<String> facts, ExitCode code) {
        facts.forEach(fact -> line.getErr().println(TerminalText.harmless(fact)));
        line.getErr().flush();
        return code.number();
    }
}
