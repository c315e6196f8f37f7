package org.warmvat.spelling;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds the known word a misspelt one most likely stands for. */
public final class Nearest {
    private Nearest() {}

    /** The nearest word by edit distance, if it is near enough: at most a third of the letters differ, and two always may. */
    public static Optional<String> of(String word, Collection<String> known) {
        String wanted = word.toLowerCase(Locale.ROOT);
        String best = null;
        int least = Math.max(2, word.length() / 3) + 1;
        for (String candidate : known) {
            int distance = distance(wanted, candidate.toLowerCase(Locale.ROOT));
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** All known names, and which of them was probably meant. */
    public static String listAnd(String name, List<String> known) {
        return String.join(", ", known)
                + of(name, known).map(best -> " (did you mean " + best + "?)").orElse("");
    }

    /** Letters to insert, remove or exchange to get from one word to the other (Levenshtein 1966). */
    public static int distance(String from, String to) {
        int[] row = IntStream.rangeClosed(0, to.length()).toArray();
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int exchanged = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(exchanged, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
