package org.warmvat.question;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/** Finds from which value on a condition holds, on a fixed ladder of values and then between two of its rungs. */
public final class Threshold {

    private static final int PARTS = 4;
    private static final double RELATIVE = 1e-3;
    private static final double TINY = 1e-5;
    private static final double SAME_HOURS = 1;

    private Threshold() {}

    /** The lowest rung from which on all rungs hold; empty when the last does not. */
    public static OptionalInt firstFromWhichAllHold(List<Boolean> holds) {
        int rung = holds.size();
        while (rung > 0 && holds.get(rung - 1)) {
            rung--;
        }
        return rung == holds.size() ? OptionalInt.empty() : OptionalInt.of(rung);
    }

    /**
     * The least value, of a ladder or between its rungs, at which a condition holds and from which on it holds on all rungs.
     *
     * @param ladder rising values, the first 0 or more; below it nothing is sought but down to 0
     * @param holds whether it holds on each rung
     * @return empty when it does not on the last
     */
    public static OptionalDouble onLadder(
            List<Double> ladder, List<Boolean> holds, DoublePredicate condition, Parallel parallel) {
        OptionalInt first = firstFromWhichAllHold(holds);
        if (first.isEmpty()) {
            return OptionalDouble.empty();
        }
        int rung = first.getAsInt();
        double below = rung == 0 ? 0 : ladder.get(rung - 1);
        return OptionalDouble.of(narrowed(below, ladder.get(rung), condition, parallel));
    }

    /** Whether hours short never grow from rung to rung by more than an hour's worth of switching. */
    public static boolean neverWorse(List<Double> shortHours) {
        return IntStream.range(1, shortHours.size())
                .allMatch(i -> shortHours.get(i) <= shortHours.get(i - 1) + SAME_HOURS);
    }

    /**
     * Closes in on the place where a condition begins to hold, halving in the logarithm.
     *
     * @param fails a value above 0 at which it does not hold
     * @param holds a larger value at which it does
     * @param ratio how far apart the two may stay, above 1
     * @return a value at which it holds
     */
    public static double closedIn(double fails, double holds, double ratio, DoublePredicate condition) {
        double low = fails;
        double high = holds;
        while (high > low * ratio) {
            double middle = Math.sqrt(low * high);
            if (condition.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /**
     * Narrows the place where a condition begins to hold; the same whatever the number of threads.
     *
     * @param fails a value at which it does not hold
     * @param holds a larger value at which it does
     * @return a value at which it holds, no more than a thousandth above one at which it does not, or no more than a hundred
     *     thousandth of the value first given
     */
    public static double narrowed(double fails, double holds, DoublePredicate condition, Parallel parallel) {
        double low = fails;
        double high = holds;
        double tiny = TINY * holds;
        while (high - low > Math.max(tiny, RELATIVE * high)) {
            double from = low;
            double step = (high - low) / PARTS;
            List<Double> inner =
                    IntStream.range(1, PARTS).mapToObj(i -> from + i * step).toList();
            List<Boolean> met = parallel.map(inner, condition::test);
            int first = met.indexOf(true);
            high = first < 0 ? high : inner.get(first);
            low = first < 0 ? inner.get(PARTS - 2) : first == 0 ? low : inner.get(first - 1);
        }
        return high;
    }
}
