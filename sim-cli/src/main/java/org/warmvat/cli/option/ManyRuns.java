package org.warmvat.cli.option;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.answer.Program;
import org.warmvat.cli.answer.folder.ResultsFolder;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.journal.Journal;
import org.warmvat.cli.journal.JournalHead;
import org.warmvat.question.Figures;
import org.warmvat.question.Kept;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/**
 * Options of studies of many runs, which may be stopped and gone on with and may be done in parts on several machines. There is one way
 * for all: every run is kept in a journal, and the whole study is done anew in which the runs that are kept are not. So its answer is
 * the same, byte for byte, however it came about.
 */
public final class ManyRuns {

    /** Options that change nothing in what is found. */
    private static final Set<String> IDLE = Set.of(
            "--out",
            "--replace",
            "--json",
            "--quiet",
            "--trace",
            "--help",
            "--threads",
            "--resume",
            "--shard",
            "--layout",
            "--uncertain");

    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--resume",
            description =
                    "Go on with a run that was cut off: what it had done stands beside the folder of results, as its name with"
                            + " .runs, and is not done again.")
    private boolean resume;

    @Option(
            names = "--shard",
            paramLabel = "I/N",
            description = "Do only part I of N, for a batch scheduler; warmvat merge joins the folders of all parts.")
    private Optional<String> shard = Optional.empty();

    private List<Journal> joined = List.of();
    private Optional<Path> journal = Optional.empty();

    /** The part that is to be done, 1 of 1 for the whole. */
    public Shard part(RunOptions run) {
        return run.wanted(() -> Shard.parse(shard.filter(text -> joined.isEmpty())));
    }

    /** Whether only a part of the runs is asked for. */
    public boolean isPart() {
        return shard.isPresent() && joined.isEmpty();
    }

    /** From now on the whole is done, with runs that were done in parts. */
    public void join(List<Journal> parts) {
        joined = parts;
    }

    /** The file of the runs, once they are done. */
    public Optional<Path> journal() {
        return journal;
    }

    /**
     * Does the runs that are not kept.
     *
     * @throws InputRefused when what is kept is of other inputs or options
     */
    public <T> T on(RunOptions run, Inputs inputs, String what, RunOptions.Work<T> work) throws Exception {
        String study = study(inputs);
        if (!joined.isEmpty()) {
            for (Journal part : joined) {
                refuseOther(part, study, "a part");
            }
            return run.parallel(what, new Joined(joined), work);
        }
        Optional<ResultsFolder> results = run.results();
        if (results.isEmpty()) {
            return run.parallel(what, work);
        }
        Path folder = results.get().path();
        Path file = folder.resolveSibling(folder.getFileName() + ".runs");
        Shard part = part(run);
        List<String> words = spec.commandLine().getParseResult().originalArgs();
        try (Journal runs = open(run, file, new JournalHead(study, part.number(), part.of(), words))) {
            T done = run.parallel(what, runs, work);
            journal = Optional.of(file).filter(Files::exists);
            run.afterwards(() -> delete(file));
            return done;
        } finally {
            if (journal.isEmpty() && Files.exists(file)) {
                run.tell("The runs done so far are kept in " + file.getFileName() + ": --resume goes on from them.");
            }
        }
    }

    private Journal open(RunOptions run, Path file, JournalHead head) throws IOException {
        if (!Files.exists(file) || (run.replace() && !resume)) {
            return Journal.begun(file, head);
        }
        if (!resume) {
            throw new InputRefused(
                    file + ": holds runs of one that was cut off, expected --resume to go on from them, or"
                            + " --replace to begin anew");
        }
        Journal kept = opened(file, true);
        refuseOther(kept, head.study(), file.toString());
        if (kept.head().part() != head.part() || kept.head().parts() != head.parts()) {
            throw new InputRefused(file + ": holds runs of part " + kept.head().part() + "/"
                    + kept.head().parts() + ", expected those of " + head.part() + "/" + head.parts());
        }
        run.tell(kept.runs() + " runs that were done before are not done again.");
        return kept;
    }

    /** Opens a journal; what is none is refused as an input. */
    public static Journal opened(Path file, boolean toGoOn) {
        try {
            return Journal.opened(file, toGoOn);
        } catch (IOException none) {
            throw new InputRefused(file + ": cannot be read as runs that were kept (" + none.getMessage() + ")");
        }
    }

    private static void refuseOther(Journal journal, String study, String name) {
        if (!journal.head().study().equals(study)) {
            throw new InputRefused(
                    name + ": holds runs of other inputs, options or another version of the program, expected the"
                            + " same");
        }
    }

    /** Hash of all that the runs depend on. */
    private String study(Inputs inputs) {
        Stream<String> options = spec.options().stream()
                .filter(option -> !IDLE.contains(option.longestName()))
                .map(option -> option.longestName() + " " + option.getValue())
                .distinct()
                .sorted();
        String all = Stream.of(
                        Stream.of(Program.version(), spec.name()),
                        options,
                        inputs.files().stream().map(InputFile::toString))
                .flatMap(lines -> lines)
                .map(line -> line + '\n')
                .collect(Collectors.joining());
        return InputFile.of("study", "", all.getBytes(StandardCharsets.UTF_8)).sha256();
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stuck) {
            throw new UncheckedIOException(stuck);
        }
    }

    /** Runs that were done in parts. */
    private record Joined(List<Journal> parts) implements Kept {

        @Override
        public Optional<Figures> of(long run) {
            return parts.stream()
                    .map(part -> part.of(run))
                    .flatMap(Optional::stream)
                    .findFirst();
        }

        @Override
        public void keep(long run, Figures figures) {
            // what no part has done is done anew where it is asked for
        }
    }
}
