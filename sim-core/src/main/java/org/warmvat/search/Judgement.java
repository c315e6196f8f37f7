package org.warmvat.search;

import java.util.Arrays;
import java.util.List;

/**
 * What a point of a grid is worth.
 *
 * @param barred whether a limit is broken that every point with less of an easing choice breaks too
 * @param violation by how much limits are broken, 0 when none is; the less, the nearer to being allowed
 * @param aims what is to be small, the first first
 */
public record Judgement(boolean barred, double violation, List<Double> aims) {

    /**
     * Checks that what is barred breaks a limit.
     *
     * @throws IllegalArgumentException when it does not, or there is no aim
     */
    public Judgement {
        if (aims.isEmpty() || violation < 0 || (barred && violation == 0)) {
            throw new IllegalArgumentException("violation " + violation + " and aims " + aims
                    + ", expected at least one aim and a violation above 0 where barred");
        }
        aims = List.copyOf(aims);
    }

    /**
     * A weighted sum of the aims.
     *
     * @param weights one for each aim
     */
    public double weighted(double... weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            // an aim of no weight may be infinite
            sum += weights[i] == 0 ? 0 : weights[i] * aims.get(i);
        }
        return sum;
    }

    /** The weights that look at one of some aims alone. */
    public static double[] only(int aim, int aims) {
        double[] weights = new double[aims];
        Arrays.fill(weights, 0);
        weights[aim] = 1;
        return weights;
    }
}
