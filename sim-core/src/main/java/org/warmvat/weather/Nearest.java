package org.warmvat.weather;

import java.util.Comparator;
import java.util.List;

/** The known name nearest to a misspelt one. */
final class Nearest {
    private Nearest() {}

    /** All known names, and which of them was probably meant. */
    static String listAnd(String name, List<String> known) {
        String best = known.stream()
                .min(Comparator.comparingInt(candidate -> distance(name, candidate)))
                .orElseThrow();
        String all = String.join(", ", known);
        return distance(name, best) <= Math.max(2, best.length() / 2) ? all + " (did you mean " + best + "?)" : all;
    }

    /** Levenshtein's edit distance. */
    static int distance(String a, String b) {
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(swap, 1 + Math.min(previous[j], row[j - 1]));
            }
            previous = row;
        }
        return previous[b.length()];
    }
}
