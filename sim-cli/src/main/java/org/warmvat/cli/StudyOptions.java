package org.warmvat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.warmvat.cli.answer.Cautions;
import org.warmvat.cli.answer.Origin;
import org.warmvat.cli.answer.ResultsFolder;
import org.warmvat.cli.answer.ResultsRefused;
import org.warmvat.cli.answer.StudyReport;
import org.warmvat.cli.answer.StudyResults;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.answer.TextTable;
import org.warmvat.cli.plot.CannotDraw;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.engine.Engine;
import org.warmvat.study.Parallel;
import org.warmvat.tank.SiteConventions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Options and output that all studies share. */
final class StudyOptions {

    private static final int MOST_THREADS = 256;

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder for the results (warmvat- and the command's name).")
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
            names = "--threads",
            paramLabel = "N",
            description = "On how many threads to run (one for each processor); the results are the same.")
    private Integer threads;

    @Option(names = "--json", description = "Print the answer as JSON, the same as summary.json.")
    private boolean json;

    Engine engine() {
        return engine.engine();
    }

    /** Tank, weather and engine in a line. */
    String under(Inputs inputs) {
        return String.format(
                Locale.ROOT,
                "%.0f litres of slurry; weather of %s, %d hours; %s engine",
                inputs.design().design().tank().liquidVolumeM3() * 1000,
                inputs.weather().site().name(),
                inputs.weather().hours(),
                engine().name());
    }

    /** Every default and assumption of the inputs, those of an invented one first. */
    List<String> assumed(Inputs inputs) {
        List<String> assumed = new ArrayList<>(inputs.invented());
        assumed.addAll(inputs.design().assumed());
        assumed.addAll(SiteConventions.applied(inputs.design().design(), inputs.weather())
                .assumptions());
        return assumed;
    }

    /** Threads to run on, with progress on a terminal. */
    Parallel parallel(boolean quiet, String what) {
        int count = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        if (count < 1 || count > MOST_THREADS) {
            throw new ParameterException(spec.commandLine(), "--threads " + count + ", expected 1 to " + MOST_THREADS);
        }
        PrintWriter err = spec.commandLine().getErr();
        return new Parallel(count, quiet || !onTerminal() ? Parallel.Progress.SILENT : shown(err, what));
    }

    private static Parallel.Progress shown(PrintWriter err, String what) {
        return (done, all) -> {
            err.print("\r" + done + " of " + all + " " + what + (done == all ? "\r" + " ".repeat(60) + "\r" : ""));
            err.flush();
        };
    }

    @SuppressWarnings(
            "SystemConsoleNull") // later Java always has a console, and then progress shows in logs, which is harmless
    private static boolean onTerminal() {
        return System.console() != null;
    }

    /** The folder asked for, before anything runs. */
    ResultsFolder folder(Collection<String> tables, Collection<String> pictures) throws ResultsRefused {
        Path place = out == null ? Path.of("warmvat-" + spec.name()) : out;
        return ResultsFolder.at(place, replace, message -> {});
    }

    /** Pictures, or none and a word about it. */
    private List<Picture> drawn(List<Drawing> drawings) {
        try {
            return Pictures.of(drawings);
        } catch (CannotDraw cannotDraw) {
            spec.commandLine().getErr().println(cannotDraw.getMessage());
            return List.of();
        }
    }

    /** Writes the folder and answers. */
    void tell(StudyResults results, Inputs inputs, ResultsFolder folder) throws IOException {
        Origin origin = new Origin(ProgramVersion.text(), inputs.files());
        folder.write(StudyReport.files(results, drawn(results.pictures()), origin));
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.print(new String(StudyReport.summary(results, origin), StandardCharsets.UTF_8));
        } else {
            print(results, inputs.invented(), to);
            to.println("Report, tables and pictures: " + folder.path().resolve("report.html"));
        }
        to.flush();
    }

    private static void print(StudyResults results, List<String> invented, PrintWriter to) {
        to.println(results.title());
        invented.forEach(to::println);
        results.answer().forEach(paragraph -> {
            to.println();
            to.println(paragraph.heading());
            paragraph.sentences().forEach(sentence -> to.println("  " + sentence));
        });
        for (Table table : results.tables()) {
            to.println();
            TextTable.lines(table).forEach(to::println);
        }
        if (!results.warnings().isEmpty()) {
            to.println();
            to.println("Warnings");
            results.warnings().forEach(sentence -> to.println("  " + sentence));
        }
        to.println();
        to.println(Cautions.SHORT);
    }
}
