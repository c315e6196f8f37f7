package org.warmvat.cli.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Collects what is wrong with a file, each with its line and path, one fault a path. */
final class Faults {

    /** How many are told at most. */
    static final int MOST_TOLD = 20;

    private static final int MOST_SHOWN_LETTERS = 60;

    private final String file;
    private final Map<String, Integer> lines;
    private final List<Fault> found = new ArrayList<>();
    private final Set<String> paths = new HashSet<>();
    private Set<String> spoilt = Set.of();

    private record Fault(int line, String text) {}

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

    /** A number as messages print it: no exponent for everyday sizes, no trailing ".0". */
    static String number(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }

    /** A text in quotes, cut where long, with control characters made visible. */
    static String quoted(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints()
                .limit(MOST_SHOWN_LETTERS)
                .forEach(c -> shown.append(Character.isISOControl(c) ? "?" : Character.toString(c)));
        return shown.append(text.codePointCount(0, text.length()) > MOST_SHOWN_LETTERS ? "...\"" : "\"")
                .toString();
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
            found.add(new Fault(lineOf(path), path + " " + text));
        }
    }

    /** Adds a fault of a line that belongs to no key. */
    void addAtLine(int line, String text) {
        found.add(new Fault(line, text));
    }

    /** Adds a missing key where it is needed and absent, with what the schema allows and why it is needed. */
    void needed(String path, Optional<?> value, boolean needed, String reason) {
        if (needed && value.isEmpty()) {
            add(path, "is missing, expected " + Expectation.of(DesignSchema.at(path)) + " (" + reason + ")");
        }
    }

    /** Adds a key that is present where it has no place. */
    void unwanted(String path, Optional<?> value, boolean unwanted, String reason) {
        if (unwanted && value.isPresent()) {
            add(path, "has no place here: " + reason);
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
                .forEach(fault ->
                        told.add(file + (fault.line() > 0 ? " line " + fault.line() : "") + ": " + fault.text()));
        if (found.size() > MOST_TOLD) {
            told.add(file + ": and " + (found.size() - MOST_TOLD) + " more");
        }
        return told;
    }

    void refuseIfAny() {
        if (!isEmpty()) {
            throw new InputRefused(told());
        }
    }

    private int lineOf(String path) {
        for (String at = path; !at.isEmpty(); at = KeyPath.parent(at)) {
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
