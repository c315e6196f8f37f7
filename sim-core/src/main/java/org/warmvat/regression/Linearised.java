package org.warmvat.regression;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * A model taken as straight about some parameters.
 *
 * @param at the times
 * @param jacobian how the series follows each parameter, one column each
 * @param residuals observed less model
 */
record Linearised(Observations at, RealMatrix jacobian, RealVector residuals) {

    /** Columns of unit length whose least singular value is below this share of the greatest are not independent. */
    private static final double SINGULAR = 1e-9;

    /**
     * The best parameters under some errors.
     *
     * @param step what they differ by from those taken
     * @param root lower triangle times its transpose is their covariance, but for the errors' variance
     * @param squares sum of squares of the whitened residuals that remain
     * @param logDeterminant logarithm of the determinant of the information, but for the errors' variance
     */
    record Best(RealVector step, RealMatrix root, double squares, double logDeterminant) {}

    int parameters() {
        return jacobian.getColumnDimension();
    }

    int degreesOfFreedom() {
        return at.size() - parameters();
    }

    /** Whether the series says nothing of a parameter, or of some only together. */
    boolean isSingular() {
        RealMatrix scaled = jacobian.copy();
        for (int column = 0; column < parameters(); column++) {
            RealVector vector = scaled.getColumnVector(column);
            if (vector.getNorm() == 0) {
                return true;
            }
            scaled.setColumnVector(column, vector.unitVector());
        }
        return new SingularValueDecomposition(scaled).getInverseConditionNumber() < SINGULAR;
    }

    /** The best parameters under some errors; not where {@link #isSingular}. */
    Best under(Ar1Errors errors) {
        RealMatrix white = errors.whitened(jacobian);
        RealVector left = new ArrayRealVector(errors.whitened(residuals.toArray()), false);
        QRDecomposition factors = new QRDecomposition(white);
        RealVector step = factors.getSolver().solve(left);
        double rest = left.subtract(white.operate(step)).getNorm();
        RealMatrix triangle = factors.getR().getSubMatrix(0, parameters() - 1, 0, parameters() - 1);
        double logDeterminant = 0;
        for (int i = 0; i < parameters(); i++) {
            logDeterminant += 2 * Math.log(Math.abs(triangle.getEntry(i, i)));
        }
        RealMatrix root = new QRDecomposition(triangle).getSolver().getInverse();
        return new Best(step, root, rest * rest, logDeterminant);
    }

    /** Covariance of the best parameters under some errors: the optimiser's would lack the errors' variance. */
    RealMatrix covariance(Best best) {
        return best.root().multiply(best.root().transpose()).scalarMultiply(best.squares() / degreesOfFreedom());
    }
}
