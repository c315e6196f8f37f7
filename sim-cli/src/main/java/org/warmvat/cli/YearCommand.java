package org.warmvat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.account.Period;
import org.warmvat.cli.answer.Answer;
import org.warmvat.cli.answer.Origin;
import org.warmvat.cli.answer.Paragraph;
import org.warmvat.cli.answer.Report;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.cli.answer.YearPayback;
import org.warmvat.cli.answer.YearPictures;
import org.warmvat.cli.plot.CannotDraw;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.design.Design;
import org.warmvat.network.Warning;
import org.warmvat.question.Parallel;
import org.warmvat.question.payback.PaybackStudy;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;
import org.warmvat.tank.Runner;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.doubt.Doubts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code year}: runs a design through its weather, answers in words and writes the results folder. */
@Command(
        name = "year",
        addMethodSubcommands = false,
        sortOptions = false,
        description = {
            "Runs the tank through every hour of a weather file and says whether it kept warm, what sun and backup gave,"
                    + " what the machinery ate, and what is left of the gas.",
            "Writes a folder with the report, tables and pictures. Without a design or weather the built-in invented"
                    + " demonstration is used."
        })
final class YearCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Mixin
    private InputArguments arguments;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "warmvat-year",
            description = "Folder for the results (${DEFAULT-VALUE}).")
    private Path out;

    @Option(names = "--replace", description = "Replace results that stand there already.")
    private boolean replace;

    @Option(
            names = "--engine",
            paramLabel = "NAME",
            defaultValue = "fast",
            converter = EngineChoice.Converter.class,
            description = "Which engine integrates: ${COMPLETION-CANDIDATES} (${DEFAULT-VALUE}).")
    private EngineChoice engine;

    @Option(
            names = "--payback",
            description = "Also tell from where on more foam or collector no longer pays; runs some more design-years.")
    private boolean payback;

    @Option(names = "--json", description = "Print the answer as JSON, the same as summary.json.")
    private boolean json;

    @Override
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        ResultsFolder folder = ResultsFolder.at(out, replace, message -> {});
        Inputs inputs = arguments.read();
        Runner runner = new Runner(inputs.weather(), engine.engine());
        YearResult run = run(inputs, runner);
        Optional<YearPayback> more = payback ? Optional.of(payback(inputs, runner, run.whole())) : Optional.empty();
        Origin origin = new Origin(ProgramVersion.text(), inputs.files());
        folder.write(Report.files(run, more, origin, pictures(run)));
        answer(run, more, origin, inputs.invented(), folder);
        return ExitCode.DONE.number();
    }

    private YearResult run(Inputs inputs, Runner runner) throws StudyRefused {
        PrintWriter err = spec.commandLine().getErr();
        YearResult run = YearStudy.run(
                inputs.design().design(),
                runner,
                new Progress(
                        err, !common.quiet() && onTerminal(), inputs.weather().hours()));
        List<Warning> doubts = new ArrayList<>();
        inputs.design().cautions().forEach(sentence -> doubts.add(new Warning("design", sentence, 1, 0)));
        Doubts.of(inputs.weather())
                .forEach(suspicion -> doubts.add(new Warning("weather", suspicion.sentence(), 1, 0)));
        return run.with(inputs.invented(), List.of()).with(inputs.design().assumed(), doubts);
    }

    private YearPayback payback(Inputs inputs, Runner runner, Period year) throws StudyRefused {
        Design design = inputs.design().design();
        if (year.hours() < PaybackStudy.YEAR_H) {
            return new YearPayback(design, year.hours(), Optional.empty());
        }
        int threads = Runtime.getRuntime().availableProcessors();
        try (Parallel parallel = new Parallel(threads, Parallel.Progress.SILENT)) {
            return new YearPayback(design, year.hours(), Optional.of(PaybackStudy.run(design, year, runner, parallel)));
        }
    }

    @SuppressWarnings(
            "SystemConsoleNull") // later Java always has a console, and then progress shows in logs, which is harmless
    private static boolean onTerminal() {
        return System.console() != null;
    }

    /** Pictures, or none and a word about it. */
    private List<Picture> pictures(YearResult run) {
        try {
            return Pictures.of(YearPictures.of(run));
        } catch (CannotDraw cannotDraw) {
            spec.commandLine().getErr().println(cannotDraw.getMessage());
            return List.of();
        }
    }

    private void answer(
            YearResult run, Optional<YearPayback> more, Origin origin, List<String> invented, ResultsFolder folder) {
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.print(new String(Report.summary(run, more, origin), StandardCharsets.UTF_8));
        } else {
            to.println(run.design().title());
            invented.forEach(to::println);
            Answer.of(run, more).forEach(paragraph -> print(paragraph, to));
            more.ifPresent(steps -> steps.lines().forEach(to::println));
            print(new Paragraph("Warnings", sentences(run.warnings())), to);
            to.println();
            to.println(
                    "Caution: biogas burns, explodes, poisons and suffocates; hot water scalds; never enter a tank.");
            to.println("Report, tables and pictures: " + folder.path().resolve("report.html"));
        }
        to.flush();
    }

    private static List<String> sentences(List<Warning> warnings) {
        return warnings.isEmpty()
                ? List.of("None.")
                : warnings.stream().map(Warning::sentence).toList();
    }

    private static void print(Paragraph paragraph, PrintWriter to) {
        to.println();
        to.println(paragraph.heading());
        paragraph.sentences().forEach(sentence -> to.println("  " + sentence));
    }
}
