package org.warmvat.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.option.ExitCode;
import org.warmvat.cli.option.Failures;
import org.warmvat.cli.option.RunningCommand;
import org.warmvat.cli.page.Questions;
import org.warmvat.design.keys.Slot;
import org.warmvat.question.Parallel;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The questions of the page are the commands that answer, with the options, the help and the faults of the command line. */
final class PageQuestions implements Questions {

    /** Options of place, form and machine: on the page they mean nothing. */
    private static final Set<String> NOT_ON_THE_PAGE = Set.of(
            "--out",
            "--replace",
            "--json",
            "--quiet",
            "--trace",
            "--help",
            "--layout",
            "--engine",
            "--threads",
            "--fill-holes",
            "--shard",
            "--resume",
            "--picture");

    /** Joins folders of results that lie on the machine. */
    private static final String MERGE = "merge";

    /** Begins the sentences about a command line without files; the page always has a design and weather. */
    private static final String WITHOUT = "Without ";

    private static final String DESIGN = "DESIGN";
    private static final String WEATHER = "WEATHER";

    @Override
    public List<Question> all() {
        List<Question> questions = new ArrayList<>();
        Warmvat.commandLine().getSubcommands().forEach((name, line) -> {
            if (line.getCommand() instanceof Answering && !name.equals(MERGE)) {
                questions.add(question(name, line.getCommandSpec()));
            }
        });
        return questions;
    }

    private static Question question(String name, CommandSpec spec) {
        List<Field> fields = new ArrayList<>();
        List<Slot> slots = new ArrayList<>();
        for (PositionalParamSpec argument : spec.positionalParameters()) {
            if (!argument.paramLabel().equals(DESIGN) && !argument.paramLabel().equals(WEATHER)) {
                slots.add(new Slot(
                        argument.paramLabel(), said(argument), argument.arity().min() > 0));
            }
        }
        for (OptionSpec option : spec.options()) {
            if (isFile(option) && !isWeather(option) && isOnThePage(option)) {
                slots.add(new Slot(option.longestName(), said(option), option.required()));
            } else if (!isFile(option) && isOnThePage(option)) {
                String form = option.arity().max() == 0 ? "" : option.paramLabel();
                String usual = Optional.ofNullable(option.defaultValue()).orElse("");
                fields.add(new Field(option.longestName(), form, said(option), usual));
            }
        }
        List<String> says = Arrays.asList(spec.usageMessage().description());
        String more = says.stream()
                .skip(1)
                .filter(sentence -> !sentence.startsWith(WITHOUT))
                .collect(Collectors.joining(" "));
        return new Question(name, says.get(0), more, fields, slots, takesSeveralDesigns(spec));
    }

    private static boolean isOnThePage(OptionSpec option) {
        return !option.hidden() && !NOT_ON_THE_PAGE.contains(option.longestName());
    }

    private static boolean takesSeveralDesigns(CommandSpec spec) {
        return spec.positionalParameters().stream()
                .anyMatch(argument ->
                        argument.paramLabel().equals(DESIGN) && argument.arity().max() > 1);
    }

    private static boolean isFile(ArgSpec option) {
        return Arrays.asList(option.typeInfo().getType(), lastOf(option)).contains(Path.class);
    }

    private static Class<?> lastOf(ArgSpec option) {
        Class<?>[] types = option.auxiliaryTypes();
        return types[types.length - 1];
    }

    private static boolean isWeather(OptionSpec option) {
        return option.longestName().equals("--weather");
    }

    private static String said(ArgSpec spec) {
        String usual = Optional.ofNullable(spec.defaultValue()).orElse("");
        return String.join(" ", spec.description()).replace("${DEFAULT-VALUE}", usual);
    }

    @Override
    public Document answer(String question, Map<String, String> options, Given given, Parallel.Progress progress)
            throws NotAnswered {
        StringWriter said = new StringWriter();
        CommandLine line = Warmvat.commandLine();
        line.setErr(new PrintWriter(said)).setOut(new PrintWriter(new StringWriter()));
        CommandLine command = line.getSubcommands().get(question);
        String[] words = words(command.getCommandSpec(), options, given);
        try {
            ParseResult parsed = line.setExpandAtFiles(false).parseArgs(words);
            return document(command, parsed, progress);
        } catch (ParameterException wrong) {
            Failures.wrongUse(wrong, words);
        }
        throw new NotAnswered(said.toString().lines().toList());
    }

    private static Document document(CommandLine command, ParseResult parsed, Parallel.Progress progress)
            throws NotAnswered {
        Answering answering = command.getCommand();
        if (answering instanceof RunningCommand running) {
            running.run().tellProgress(progress);
        }
        try {
            return answering.document();
        } catch (ParameterException | CancellationException known) {
            throw known;
        } catch (Exception failure) {
            StringWriter said = new StringWriter();
            command.setErr(new PrintWriter(said));
            Failures.handle(failure, command, parsed);
            throw new NotAnswered(said.toString().lines().toList());
        }
    }

    /** The command line that asks the same. Values stand in the words of their options, so that none is taken for a file or an option. */
    private static String[] words(CommandSpec spec, Map<String, String> options, Given given) {
        List<String> words = new ArrayList<>(List.of(spec.name()));
        for (OptionSpec option : spec.options()) {
            String name = option.longestName();
            if (isWeather(option)) {
                words.add(name + "=" + given.weather().file());
            } else if (name.equals("--layout")) {
                given.weather().layout().ifPresent(layout -> words.add(name + "=" + layout));
            } else if (name.equals("--fill-holes")) {
                words.add(name + "=" + given.weather().fillHolesH());
            } else if (isFile(option) && given.files().containsKey(name)) {
                words.add(name + "=" + given.files().get(name));
            } else if (options.containsKey(name)) {
                values(option, options.get(name)).forEach(words::add);
            }
        }
        for (PositionalParamSpec argument : inOrder(spec)) {
            switch (argument.paramLabel()) {
                case DESIGN -> designs(argument, given).map(Path::toString).forEach(words::add);
                case WEATHER -> words.add(given.weather().file().toString());
                default ->
                    Optional.ofNullable(given.files().get(argument.paramLabel()))
                            .map(Path::toString)
                            .ifPresent(words::add);
            }
        }
        return words.toArray(String[]::new);
    }

    private static List<PositionalParamSpec> inOrder(CommandSpec spec) {
        return spec.positionalParameters().stream()
                .sorted(Comparator.comparingInt(argument -> argument.index().min()))
                .toList();
    }

    private static Stream<Path> designs(PositionalParamSpec argument, Given given) {
        return argument.arity().max() > 1
                ? Stream.concat(Stream.of(given.design()), given.pinned().stream())
                : Stream.of(given.design());
    }

    /** An option as often as it has values: those without commas of their own are set apart by blanks. */
    private static Stream<String> values(OptionSpec option, String text) {
        if (option.arity().max() == 0) {
            return Stream.of(option.longestName());
        }
        boolean several = option.isMultiValue() && option.splitRegex().isEmpty();
        return Stream.of(several ? text.strip().split("\\s+") : new String[] {text.strip()})
                .filter(value -> !value.isEmpty())
                .map(value -> option.longestName() + "=" + value);
    }

    @Override
    public String starter(String litres, String setpointC, WeatherGiven weather) throws NotAnswered {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).setExpandAtFiles(false);
        List<String> words = new ArrayList<>(List.of("new", "--litres=" + litres, "--setpoint=" + setpointC));
        words.add("--weather=" + weather.file());
        words.add("--fill-holes=" + weather.fillHolesH());
        weather.layout().ifPresent(layout -> words.add("--layout=" + layout));
        if (line.execute(words.toArray(String[]::new)) != ExitCode.DONE.number()) {
            throw new NotAnswered(err.toString().lines().toList());
        }
        return out.toString();
    }
}
