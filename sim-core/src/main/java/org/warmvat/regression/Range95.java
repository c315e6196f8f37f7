package org.warmvat.regression;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * A 95 % interval.
 *
 * @param low its lower end
 * @param high its upper end
 */
public record Range95(double low, double high) {

    /** Between the 2.5 and 97.5 % points of draws. */
    public static Range95 ofDraws(double[] draws) {
        Percentile percentile = new Percentile();
        percentile.setData(draws);
        return new Range95(percentile.evaluate(2.5), percentile.evaluate(97.5));
    }

    /** The mean of draws less and plus 1.96 of their standard deviations. */
    public static Range95 ofFewDraws(double[] draws) {
        double mean = Arrays.stream(draws).average().orElseThrow();
        double squares =
                Arrays.stream(draws).map(draw -> (draw - mean) * (draw - mean)).sum();
        double half = 1.96 * Math.sqrt(squares / (draws.length - 1));
        return new Range95(mean - half, mean + half);
    }

    /** How wide. */
    public double width() {
        return high - low;
    }

    /** The wider of this and another. */
    public Range95 orWider(Range95 other) {
        return other.width() > width() ? other : this;
    }

    /** Whether its ends differ by more than a factor 2, or one of them is not above 0. */
    public boolean isWiderThanAFactorOfTwo() {
        return low <= 0 || high > 2 * low;
    }

    /** Whether a value lies in it. */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }
}
