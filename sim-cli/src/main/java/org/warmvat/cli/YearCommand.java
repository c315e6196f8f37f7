package org.warmvat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.warmvat.cli.plot.CannotDraw;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.cli.report.Answer;
import org.warmvat.cli.report.Cautions;
import org.warmvat.cli.report.Origin;
import org.warmvat.cli.report.Paragraph;
import org.warmvat.cli.report.Report;
import org.warmvat.cli.report.ResultsFolder;
import org.warmvat.cli.report.ResultsRefused;
import org.warmvat.result.RunResult;
import org.warmvat.result.Warning;
import org.warmvat.study.StudyRefused;
import org.warmvat.study.YearStudy;
import org.warmvat.weather.Suspicions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code year}: runs a design through its weather, answers in words and writes the results folder. */
@Command(
        name = "year",
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

    @Option(names = "--json", description = "Print the answer as JSON, the same as summary.json.")
    private boolean json;

    @Override
    public Integer call() throws ResultsRefused, StudyRefused, IOException {
        ResultsFolder folder = ResultsFolder.at(out, replace, Report.fileNames());
        Inputs inputs = arguments.read();
        RunResult run = run(inputs);
        Origin origin = new Origin(ProgramVersion.text(), inputs.files());
        folder.write(Report.files(run, origin, pictures(run)));
        answer(run, origin, inputs.invented(), folder);
        return ExitCode.DONE.number();
    }

    private RunResult run(Inputs inputs) throws StudyRefused {
        PrintWriter err = spec.commandLine().getErr();
        RunResult run = YearStudy.run(
                inputs.design().design(),
                inputs.weather(),
                engine.engine(),
                new Progress(
                        err, !common.quiet() && onTerminal(), inputs.weather().hours()));
        List<Warning> doubts = new ArrayList<>();
        inputs.design().cautions().forEach(sentence -> doubts.add(new Warning("design", sentence, 1, 0)));
        Suspicions.of(inputs.weather())
                .forEach(suspicion -> doubts.add(new Warning("weather", suspicion.sentence(), 1, 0)));
        return run.with(inputs.invented(), List.of()).with(inputs.design().assumed(), doubts);
    }

    @SuppressWarnings(
            "SystemConsoleNull") // later Java always has a console, and then progress shows in logs, which is harmless
    private static boolean onTerminal() {
        return System.console() != null;
    }

    /** Pictures, or none and a word about it. */
    private List<Picture> pictures(RunResult run) {
        try {
            return Pictures.of(run);
        } catch (CannotDraw cannotDraw) {
            spec.commandLine().getErr().println(cannotDraw.getMessage());
            return List.of();
        }
    }

    private void answer(RunResult run, Origin origin, List<String> invented, ResultsFolder folder) {
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.print(new String(Report.summary(run, origin), StandardCharsets.UTF_8));
        } else {
            to.println(run.title());
            invented.forEach(to::println);
            Answer.of(run).forEach(paragraph -> print(paragraph, to));
            print(new Paragraph("Warnings", sentences(run.warnings())), to);
            to.println();
            to.println(Cautions.SHORT);
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
