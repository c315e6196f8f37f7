package org.warmvat.question;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/** Finds from which value on a condition holds, on a fixed ladder of values and then between two of its rungs. */
public final class Threshold {

    private static final int PARTS = 4;
    private static final double RELATIVE = 1e-3;
    private static final double TINY = 1e-5;

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
