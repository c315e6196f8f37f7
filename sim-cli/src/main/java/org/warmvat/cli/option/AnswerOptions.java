package org.warmvat.cli.option;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.TerminalText;
import org.warmvat.cli.answer.folder.ResultsFolder;
import org.warmvat.cli.answer.folder.ResultsRefused;
import org.warmvat.cli.answer.folder.SummaryWriter;
import picocli.CommandLine.Option;

/** Options of all commands that answer, and the way their answers take. */
public class AnswerOptions extends CommonOptions {

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

    /** Whether a folder of results that stands may be replaced. */
    public boolean replace() {
        return replace;
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
        PrintWriter to = spec().commandLine().getOut();
        if (json) {
            to.print(new String(SummaryWriter.bytes(document), StandardCharsets.UTF_8));
        } else {
            TerminalText.lines(document).forEach(to::println);
            folder.ifPresent(written -> to.println("Report, tables and pictures: " + written.page()));
        }
        to.flush();
    }
}
