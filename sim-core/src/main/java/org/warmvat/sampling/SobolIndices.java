package org.warmvat.sampling;

import java.util.Arrays;
import org.apache.commons.math3.random.Well19937c;

/**
 * Sobol' indices of an input: which share of an answer's variance goes when the input is known (first order), and which stays when
 * all others are (total).
 *
 * @param firstOrder share of the variance by the input alone
 * @param total share by the input and all it acts together with
 * @param error one standard error, the larger of the two, by bootstrap
 */
public record SobolIndices(double firstOrder, double total, double error) {

    private static final int BOOTSTRAPS = 200;

    /**
     * Estimated from two sets of draws and the first set with one input taken from the second: first order by Saltelli et al. (2010,
     * Variance based sensitivity analysis of model output, table 2 b), total by Jansen (1999).
     *
     * @param a answers of the first set
     * @param b answers of the second set
     * @param mixed answers of the first set with this input of the second
     * @param seed of the bootstrap
     * @return zeros where the answers do not vary
     * @throws IllegalArgumentException unless all three are of one length of at least 2
     */
    public static SobolIndices estimate(double[] a, double[] b, double[] mixed, long seed) {
        if (a.length < 2 || a.length != b.length || a.length != mixed.length) {
            throw new IllegalArgumentException("answers " + a.length + ", " + b.length + " and " + mixed.length
                    + ", expected as many of each, 2 or more");
        }
        int[] rows = new int[a.length];
        Arrays.setAll(rows, i -> i);
        double[] point = pair(a, b, mixed, rows);
        Well19937c random = new Well19937c(seed);
        double[] squares = new double[2];
        double[] sums = new double[2];
        for (int draw = 0; draw < BOOTSTRAPS; draw++) {
            Arrays.setAll(rows, i -> random.nextInt(rows.length));
            double[] again = pair(a, b, mixed, rows);
            for (int k = 0; k < 2; k++) {
                sums[k] += again[k];
                squares[k] += again[k] * again[k];
            }
        }
        return new SobolIndices(
                point[0], point[1], Math.max(deviation(sums[0], squares[0]), deviation(sums[1], squares[1])));
    }

    private static double deviation(double sum, double squares) {
        double mean = sum / BOOTSTRAPS;
        return Math.sqrt(Math.max(0, squares / BOOTSTRAPS - mean * mean));
    }

    /** First order and total over some rows. Answers are taken from their mean, which the estimators do not see but rounding does. */
    private static double[] pair(double[] a, double[] b, double[] mixed, int[] rows) {
        double mean = 0;
        for (int row : rows) {
            mean += (a[row] + b[row]) / (2 * rows.length);
        }
        double variance = 0;
        double first = 0;
        double total = 0;
        for (int row : rows) {
            double atA = a[row] - mean;
            double atB = b[row] - mean;
            double atMixed = mixed[row] - mean;
            variance += (atA * atA + atB * atB) / 2;
            first += atB * (atMixed - atA);
            total += (atA - atMixed) * (atA - atMixed) / 2;
        }
        return variance == 0 ? new double[2] : new double[] {first / variance, total / variance};
    }
}
