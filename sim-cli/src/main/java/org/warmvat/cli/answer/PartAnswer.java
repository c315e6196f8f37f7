package org.warmvat.cli.answer;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The answer of a part of a study that runs elsewhere too. */
public final class PartAnswer {

    /** The file of a part's folder that holds its runs. */
    public static final String RUNS = "part.runs";

    private PartAnswer() {}

    /**
     * Tells that a part is done.
     *
     * @param question stands behind the title, such as {@code varied}
     * @param part which part, counted from 1
     * @param parts how many there are
     * @param runs how many runs were done
     * @param journal the file that holds them
     */
    public static Draft of(Subject asked, String question, int part, int parts, int runs, Optional<Path> journal) {
        Draft draft = Draft.of(asked, question + ", in part")
                .verdict("Part " + part + " of " + parts + " is done: " + runs + " runs.", List.of())
                .paragraph(
                        "What was done?",
                        List.of(
                                "This folder is no answer yet: warmvat merge, given the folders of all parts, makes of their runs the"
                                        + " same answer as a single run of the whole."))
                .figure("shard", part)
                .figure("shards", parts)
                .figure("runs_here", runs);
        journal.ifPresent(path -> draft.copied(RUNS, path));
        return draft;
    }
}
