package org.warmvat.weather;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/** Least-squares fit of {@code mean - amplitude cos(2 pi/365 (t - coldest day))} to hourly temperatures (model 2.6). */
final class AnnualHarmonic {
    private static final double YEAR_DAYS = 365;

    private AnnualHarmonic() {}

    /**
     * Fits.
     *
     * @param days time of each value from the 1 January before the first
     * @param valuesC as many temperatures
     */
    static KusudaAchenbach1965 fit(double[] days, double[] valuesC) {
        double[][] normal = new double[3][3];
        double[] right = new double[3];
        for (int i = 0; i < days.length; i++) {
            double angle = 2 * Math.PI * days[i] / YEAR_DAYS;
            double[] row = {1, Math.cos(angle), Math.sin(angle)};
            for (int r = 0; r < 3; r++) {
                right[r] += row[r] * valuesC[i];
                for (int c = 0; c < 3; c++) {
                    normal[r][c] += row[r] * row[c];
                }
            }
        }
        double[] x = new CholeskyDecomposition(new Array2DRowRealMatrix(normal, false))
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
        double coldest = Math.atan2(-x[2], -x[1]) * YEAR_DAYS / (2 * Math.PI);
        return new KusudaAchenbach1965(x[0], Math.hypot(x[1], x[2]), coldest < 0 ? coldest + YEAR_DAYS : coldest);
    }
}
