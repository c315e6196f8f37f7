package org.warmvat.cli.option;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.answer.folder.ResultsFolder;
import org.warmvat.cli.answer.folder.ResultsRefused;
import org.warmvat.cli.answer.folder.SummaryWriter;
import org.warmvat.cli.words.Numerals;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Options of all commands that answer, and the way their answers take. */
public class AnswerOptions extends CommonOptions {

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Folder for report, tables and pictures; commands that run tanks always write one (warmvat- and the"
                            + " command's name).")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--replace", description = "Replace results that stand there already.")
    private boolean replace;

    @Option(names = "--json", description = "Print the answer as JSON, the same as summary.json.")
    private boolean json;

    private Optional<ResultsFolder> folder = Optional.empty();
    private Runnable afterwards = () -> {};

    /** The command that is asked. */
    public CommandSpec spec() {
        return spec;
    }

    /** Whether a folder of results that stands may be replaced. */
    public boolean replace() {
        return replace;
    }

    /** Messages that are no answer; none when all is to be quiet. */
    void tell(String message) {
        if (!quiet()) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(TerminalText.harmless(message));
            err.flush();
        }
    }

    /** A fault of the command line. */
    public ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }

    /** What an option means; refused where it means nothing. */
    public <T> T wanted(Supplier<T> meaning) {
        try {
            return meaning.get();
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), wrong.getMessage(), wrong);
        }
    }

    /** Refuses a number of an option that lies outside its limits. */
    public void within(String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw wrong(option + " " + Numerals.exact(value) + ", expected " + Numerals.exact(least) + " to "
                    + Numerals.exact(most));
        }
    }

    /** Where results go: nowhere, unless asked for. */
    public Optional<Path> place() {
        return out;
    }

    /** The folder that the answer goes into; none where there is none, or where the answer is only worked out. */
    Optional<ResultsFolder> results() {
        return folder;
    }

    /** What is done once the answer is written. */
    void afterwards(Runnable last) {
        afterwards = last;
    }

    /** Works an answer out, writes its folder and prints it. The place of the folder is looked at first. */
    public int answer(Callable<Document> work) throws Exception {
        folder = folder();
        Document document = work.call();
        document.body().notDrawn().ifPresent(this::tell);
        if (folder.isPresent()) {
            folder.get().write(document);
        }
        afterwards.run();
        print(document, folder);
        return ExitCode.DONE.number();
    }

    private Optional<ResultsFolder> folder() throws ResultsRefused {
        Optional<Path> place = place();
        return place.isPresent() ? Optional.of(ResultsFolder.at(place.get(), replace, this::tell)) : Optional.empty();
    }

    private void print(Document document, Optional<ResultsFolder> folder) throws IOException {
        PrintWriter to = spec.commandLine().getOut();
        if (json) {
            to.print(new String(SummaryWriter.bytes(document), StandardCharsets.UTF_8));
        } else {
            TerminalText.lines(document).forEach(to::println);
            folder.ifPresent(written -> to.println("Report, tables and pictures: " + written.page()));
        }
        to.flush();
    }
}
