package org.warmvat.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.PartAnswer;
import org.warmvat.cli.file.InputRefused;
import org.warmvat.cli.journal.Journal;
import org.warmvat.cli.journal.JournalHead;
import org.warmvat.cli.option.AnswerOptions;
import org.warmvat.cli.option.Answering;
import org.warmvat.cli.option.ManyRuns;
import org.warmvat.cli.option.Partable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code merge}: the whole answer from its parts. */
@Command(
        name = "merge",
        sortOptions = false,
        description = {
            "Joins the parts that vary, spread or choose have done with --shard I/N: makes the same answer, byte for byte, as one run of the"
                    + " whole.",
            "The inputs must lie where the parts found them, seen from the folder this is called in; they are checked by their hashes."
        })
final class MergeCommand implements Answering, Callable<Integer> {

    @Mixin
    private AnswerOptions answer;

    @Parameters(arity = "1..*", paramLabel = "FOLDER", description = "Folders of results of all parts, in any order.")
    private List<Path> folders;

    @Override
    public Integer call() throws Exception {
        return answer.answer(this::document);
    }

    @Override
    public Document document() throws Exception {
        List<Journal> parts = new ArrayList<>();
        try {
            folders.forEach(folder -> parts.add(ManyRuns.opened(folder.resolve(PartAnswer.RUNS), false)));
            refuseIfIncomplete(parts);
            return whole(parts);
        } finally {
            for (Journal part : parts) {
                part.close();
            }
        }
    }

    private void refuseIfIncomplete(List<Journal> parts) {
        List<String> faults = new ArrayList<>();
        JournalHead first = parts.get(0).head();
        Set<Integer> seen = new TreeSet<>();
        for (int i = 0; i < parts.size(); i++) {
            JournalHead head = parts.get(i).head();
            if (!head.study().equals(first.study()) || head.parts() != first.parts()) {
                faults.add(folders.get(i) + ": is a part of another study than " + folders.get(0)
                        + ", expected parts of one");
            } else if (!seen.add(head.part())) {
                faults.add(folders.get(i) + ": is part " + head.part() + " again, expected each once");
            }
        }
        String missing = IntStream.rangeClosed(1, first.parts())
                .filter(part -> !seen.contains(part))
                .mapToObj(part -> part + "/" + first.parts())
                .collect(Collectors.joining(", "));
        if (faults.isEmpty() && !missing.isEmpty()) {
            faults.add("part " + missing + " is missing, expected the folders of all " + first.parts());
        }
        InputRefused.ifAny(faults);
    }

    /** Does the command of the parts anew, as a whole, with their runs. */
    private static Document whole(List<Journal> parts) throws Exception {
        List<String> words = parts.get(0).head().words();
        CommandLine line = Warmvat.commandLine();
        line.parseArgs(words.toArray(new String[0]));
        Partable command = line.getSubcommands().get(words.get(0)).getCommand();
        command.many().join(parts);
        return command.document();
    }
}
