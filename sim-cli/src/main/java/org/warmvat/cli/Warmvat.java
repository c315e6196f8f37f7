package org.warmvat.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.warmvat.cli.option.EngineChoice;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Failures;
import org.warmvat.cli.option.MonthDayConverter;
import org.warmvat.cli.option.OptionWord;
import org.warmvat.cli.option.Stoppable;
import org.warmvat.cli.weather.WeatherCommand;
import org.warmvat.question.choose.Aim;
import org.warmvat.question.starter.Starter;
import org.warmvat.weather.Stamp;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program {@code warmvat}: one subcommand per question. */
@Command(
        name = "warmvat",
        addMethodSubcommands = false,
        description = "Says from hourly weather whether a small heated digester returns more energy than it takes.",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:a fault of the program",
            "2:wrong use",
            "3:an input was refused",
            "4:the run could not be completed, or was stopped"
        })
public final class Warmvat implements Runnable {

    private static final Map<String, Class<?>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("check", CheckCommand.class);
        COMMANDS.put("year", YearCommand.class);
        COMMANDS.put("carry", CarryCommand.class);
        COMMANDS.put("fit", FitCommand.class);
        COMMANDS.put("backup", BackupCommand.class);
        COMMANDS.put("hold", HoldCommand.class);
        COMMANDS.put("spring", SpringCommand.class);
        COMMANDS.put("holder", HolderCommand.class);
        COMMANDS.put("compare", CompareCommand.class);
        COMMANDS.put("advise", AdviseCommand.class);
        COMMANDS.put("vary", VaryCommand.class);
        COMMANDS.put("sizes", SizesCommand.class);
        COMMANDS.put("choose", ChooseCommand.class);
        COMMANDS.put("merge", MergeCommand.class);
        COMMANDS.put("page", PageCommand.class);
        COMMANDS.put("spread", SpreadCommand.class);
        COMMANDS.put("new", NewCommand.class);
        COMMANDS.put("schema", SchemaCommand.class);
        COMMANDS.put("weather", WeatherCommand.class);
    }

    @Spec
    private CommandSpec spec;

    /** Runs the program and ends the process with an {@link ExitCode}; all text is UTF-8 whatever the locale. */
    public static void main(String[] args) {
        CommandLine line = commandLine(called(args));
        line.setOut(utf8(new FileOutputStream(FileDescriptor.out))); // System.out would swallow what fails
        line.setErr(utf8(System.err));
        System.exit(Stoppable.run(() -> line.execute(args)));
    }

    private static PrintWriter utf8(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    /** The whole command line with its exit codes; the streams can be set by the caller. */
    public static CommandLine commandLine() {
        return commandLine(COMMANDS.keySet());
    }

    /** The one command that is called by its name, else all: to take in the options of all costs more than to run most of them. */
    private static Set<String> called(String... args) {
        return args.length > 0 && COMMANDS.containsKey(args[0]) ? Set.of(args[0]) : COMMANDS.keySet();
    }

    /** Options of no command are times or databases; to learn to read these would load them all at every start. */
    @SuppressWarnings(
            "deprecation") // of splitting what is quoted: no other setting keeps the parser from warnings of its own
    private static CommandLine commandLine(Set<String> names) {
        System.setProperty("picocli.converters.excludes", "java.sql.*,java.time.*");
        CommandLine line = new CommandLine(new Warmvat());
        names.forEach(name -> line.addSubcommand(name, COMMANDS.get(name)));
        line.registerConverter(Path.class, Warmvat::path);
        line.registerConverter(double.class, Warmvat::number);
        line.registerConverter(Double.class, Warmvat::number);
        line.registerConverter(MonthDay.class, new MonthDayConverter());
        OptionWord.register(line, EngineChoice.class);
        OptionWord.register(line, Stamp.class);
        OptionWord.register(line, Aim.class);
        OptionWord.register(line, Starter.Standing.class);
        OptionWord.register(line, Starter.CollectorKind.class);
        OptionWord.register(line, Starter.Source.class);
        OptionWord.register(line, NewCommand.Season.class);
        // a stray quote is told as part of the value that it spoils, not by the parser's own words
        line.setSplitQuotedStrings(true);
        line.setExecutionStrategy(Warmvat::run);
        line.setParameterExceptionHandler(Failures::wrongUse);
        line.setExecutionExceptionHandler(Failures::handle);
        return line;
    }

    private static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException none) {
            throw new CommandLine.TypeConversionException("'" + text + "' is no name of a file on this machine");
        }
    }

    private static double number(String text) {
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException none) {
            // told like one that is not finite
        }
        throw new CommandLine.TypeConversionException("'" + text + "' is no number");
    }

    /** Runs the last command given; errors of the Java machine are told like other faults, too little memory is none. */
    private static int run(CommandLine.ParseResult parsed) {
        try {
            return written(
                    new CommandLine.RunLast().execute(parsed),
                    parsed.commandSpec().commandLine());
        } catch (OutOfMemoryError tooSmall) {
            return Failures.tooLittleMemory(parsed.commandSpec().commandLine());
        } catch (StackOverflowError | LinkageError fault) {
            return Failures.ourFault(fault, parsed.commandSpec().commandLine(), parsed);
        }
    }

    /** An answer that standard output did not take, be it full or closed, is none. */
    private static int written(int code, CommandLine line) {
        if (code != ExitCode.DONE.number() || !line.getOut().checkError()) {
            return code;
        }
        line.getErr().println("The run could not be completed: standard output did not take the answer");
        line.getErr().flush();
        return ExitCode.RUN_NOT_COMPLETED.number();
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command is named, expected one such as check or year");
    }
}
