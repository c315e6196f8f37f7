package org.warmvat.sampling;

import java.util.Arrays;

/**
 * The middle nine tenths of some draws.
 *
 * @param p5 the value that 5 in 100 stay below
 * @param p50 the middle
 * @param p95 the value that 5 in 100 exceed
 */
public record Quantiles(double p5, double p50, double p95) {

    /** Of some values; not a number where there are none or one is not a number. */
    public static Quantiles of(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Quantiles(quantile(sorted, 0.05), quantile(sorted, 0.5), quantile(sorted, 0.95));
    }

    /** On the straight line between the neighbours in rank (Hyndman and Fan 1996, Sample quantiles, definition 7). */
    private static double quantile(double[] sorted, double share) {
        if (sorted.length == 0 || Double.isNaN(sorted[sorted.length - 1])) {
            return Double.NaN;
        }
        double rank = share * (sorted.length - 1);
        int below = (int) rank;
        double above = sorted[Math.min(below + 1, sorted.length - 1)];
        return sorted[below] + (rank - below) * (above - sorted[below]);
    }
}
