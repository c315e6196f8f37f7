package org.warmvat.cli.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.warmvat.design.keys.KeyPath;

/** Collects what is wrong with a file, each with its line and path, one fault a path. */
final class Faults {

    /** How many are told at most. */
    static final int MOST_TOLD = 20;

    private final String file;
    private final Map<String, Integer> lines;
    private final List<Fault> found = new ArrayList<>();
    private final Set<String> paths = new HashSet<>();
    private final Map<String, String> twins = new HashMap<>();
    private Set<String> spoilt = Set.of();

    private record Fault(int line, Supplier<String> text) {}

    /**
     * Starts without faults.
     *
     * @param file name of the file as the user knows it
     * @param lines line of each key by its path; may be filled later
     */
    Faults(String file, Map<String, Integer> lines) {
        this.file = file;
        this.lines = lines;
    }

    /**
     * Adds a fault of a key, unless its path has one already or one of the blocks it depends on is known to be spoilt.
     *
     * @param path the key's path
     * @param text what was found and what was expected
     * @param blocks other top-level blocks the judgement rests on
     */
    void add(String path, String text, String... blocks) {
        for (String block : blocks) {
            if (spoilt.contains(block)) {
                return;
            }
        }
        if (!spoilt.contains(block(path)) && paths.add(path)) {
            found.add(new Fault(lineOf(path), () -> path + " " + text));
        }
    }

    /** Adds a fault of a line that belongs to no key. */
    void addAtLine(int line, String text) {
        found.add(new Fault(line, () -> text));
    }

    /** Adds a fault of a key whose text is only worked out where it is told. */
    void add(String path, Supplier<String> text) {
        if (paths.add(path)) {
            found.add(new Fault(lineOf(path), () -> path + " " + text.get()));
        }
    }

    /** From now on judgements that rest on a block with a fault are not added: they could be wrong. */
    void judgeSoundBlocksOnly() {
        Set<String> blocks = new HashSet<>();
        paths.forEach(path -> blocks.add(block(path)));
        spoilt = blocks;
    }

    boolean isFaulty(String path) {
        return paths.contains(path);
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** The faults in the order of the file, at most {@value #MOST_TOLD} and then how many more. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        found.stream()
                .sorted(Comparator.comparingInt(Fault::line))
                .limit(MOST_TOLD)
                .forEach(fault -> told.add(file + (fault.line() > 0 ? " line " + fault.line() : "") + ": "
                        + fault.text().get()));
        if (found.size() > MOST_TOLD) {
            told.add(file + ": and " + (found.size() - MOST_TOLD) + " more");
        }
        return told;
    }

    void refuseIfAny() {
        InputRefused.ifAny(told());
    }

    /** A key stands in the file by another path, whose line is told. */
    void standsAt(String path, String inTheFile) {
        twins.put(path, inTheFile);
    }

    private int lineOf(String path) {
        for (String at = twins.getOrDefault(path, path); !at.isEmpty(); at = KeyPath.parent(at)) {
            Integer line = lines.get(at);
            if (line != null) {
                return line;
            }
        }
        return lines.getOrDefault("", 0);
    }

    private static String block(String path) {
        return path.split("[.\\[]", 2)[0];
    }
}
