package org.warmvat.question.vary;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Which of many points are not beaten: no other is at least as good in both of two outputs and better in one. */
public final class Pareto {

    private Pareto() {}

    /**
     * Marks the points that are not beaten; equal points stand or fall together, and one whose number is missing never stands.
     *
     * @param first the less, the better
     * @param second the less, the better
     */
    public static boolean[] front(double[] first, double[] second) {
        boolean[] stands = new boolean[first.length];
        Integer[] order = IntStream.range(0, first.length)
                .filter(i -> !Double.isNaN(first[i]) && !Double.isNaN(second[i]))
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> first[i]).thenComparingDouble(i -> second[i]))
                .toArray(Integer[]::new);
        double best = Double.POSITIVE_INFINITY;
        int last = -1;
        for (int i : order) {
            boolean same = last >= 0 && first[i] == first[last] && second[i] == second[last];
            stands[i] = second[i] < best || (same && stands[last]);
            best = Math.min(best, second[i]);
            last = i;
        }
        return stands;
    }

    /** Their indices in order of the first output. */
    public static int[] inOrder(boolean[] stands, double[] first) {
        return Arrays.stream(IntStream.range(0, stands.length)
                        .filter(i -> stands[i])
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> first[i]))
                        .toArray(Integer[]::new))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
