package org.warmvat.regression;

import org.apache.commons.math3.linear.RealMatrix;

/**
 * Errors of which each remembers the one before: over a step dt their correlation is {@code rho^(dt / median step)}, and after
 * a gap they start afresh. Quasi-differencing makes them independent and of one variance (Cochrane and Orcutt 1949,
 * Journal of the American Statistical Association 44, 32-61; the first of each stretch kept as Prais and Winsten 1954 do).
 */
final class Ar1Errors {

    private final double[] memory;

    /**
     * Errors of a series.
     *
     * @param at the times
     * @param rho correlation over the median step, 0 up to but not including 1
     */
    Ar1Errors(Observations at, double rho) {
        memory = new double[at.size()];
        for (int i = 1; i < memory.length; i++) {
            double steps = (at.timeS(i) - at.timeS(i - 1)) / at.medianStepS();
            memory[i] = at.startsAfresh(i) ? 0 : Math.pow(rho, steps);
        }
    }

    /** The series with the memory taken out: {@code (e_i - phi_i e_(i-1)) / sqrt(1 - phi_i^2)}. */
    double[] whitened(double[] series) {
        double[] white = new double[series.length];
        white[0] = series[0];
        for (int i = 1; i < series.length; i++) {
            double phi = memory[i];
            white[i] = (series[i] - phi * series[i - 1]) / Math.sqrt(1 - phi * phi);
        }
        return white;
    }

    /** Each column with the memory taken out. */
    RealMatrix whitened(RealMatrix columns) {
        RealMatrix white = columns.copy();
        for (int column = 0; column < columns.getColumnDimension(); column++) {
            white.setColumn(column, whitened(columns.getColumn(column)));
        }
        return white;
    }

    /** Logarithm of the determinant of the errors' correlation matrix. */
    double logDeterminant() {
        double sum = 0;
        for (double phi : memory) {
            sum += Math.log1p(-phi * phi);
        }
        return sum;
    }
}
