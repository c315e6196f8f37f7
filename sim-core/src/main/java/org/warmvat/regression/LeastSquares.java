package org.warmvat.regression;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/** Levenberg-Marquardt on a whitened series, its derivatives by central differences. */
final class LeastSquares {

    private static final int MOST_TRIALS = 300;
    private static final double SETTLED = 1e-6;

    private final Observations observed;
    private final Curve curve;
    private final List<Parameter> parameters;
    private double[] lastPoint = {};
    private double[] lastSeries = {};

    LeastSquares(Observations observed, Curve curve, List<Parameter> parameters) {
        this.observed = observed;
        this.curve = curve;
        this.parameters = parameters;
    }

    /** The parameters with the least sum of squares of whitened residuals. */
    double[] best(Ar1Errors errors, double[] start) {
        try {
            return new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(SETTLED)
                    .withParameterRelativeTolerance(SETTLED)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(errors.whitened(observed.values()))
                            .model(new Whitened(errors))
                            .parameterValidator(this::held)
                            .lazyEvaluation(true)
                            .maxEvaluations(MOST_TRIALS)
                            .maxIterations(MOST_TRIALS)
                            .build())
                    .getPoint()
                    .toArray();
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException e) {
            throw new FitFailure("no best fit was found within " + MOST_TRIALS + " trials", e);
        }
    }

    /** The model as straight about some parameters. */
    Linearised linearised(double[] point) {
        RealVector left = new ArrayRealVector(observed.values(), false).subtract(new ArrayRealVector(series(point)));
        return new Linearised(observed, jacobian(point), left);
    }

    /** Derivatives of the model at some parameters, one column each. */
    private RealMatrix jacobian(double[] point) {
        RealMatrix jacobian = new Array2DRowRealMatrix(observed.size(), parameters.size());
        for (int column = 0; column < parameters.size(); column++) {
            Parameter parameter = parameters.get(column);
            double up = parameter.held(point[column] + parameter.step());
            double down = parameter.held(point[column] - parameter.step());
            double[] above = moved(point, column, up);
            double[] below = moved(point, column, down);
            for (int row = 0; row < above.length; row++) {
                jacobian.setEntry(row, column, (above[row] - below[row]) / (up - down));
            }
        }
        return jacobian;
    }

    private double[] moved(double[] point, int index, double value) {
        double[] other = point.clone();
        other[index] = value;
        return calculated(other);
    }

    private double[] series(double[] point) {
        if (!Arrays.equals(point, lastPoint)) {
            lastSeries = calculated(point);
            lastPoint = point.clone();
        }
        return lastSeries;
    }

    /** The optimiser says no word about a model that is not a number, and runs on until its trials are spent. */
    private double[] calculated(double[] point) {
        double[] series = curve.at(point);
        if (!Arrays.stream(series).allMatch(Double::isFinite)) {
            throw new FitFailure("the model has no finite value at " + Arrays.toString(point));
        }
        return series;
    }

    private RealVector held(RealVector point) {
        double[] held = point.toArray();
        Arrays.setAll(held, i -> parameters.get(i).held(held[i]));
        return new ArrayRealVector(held, false);
    }

    /** The model as the optimiser asks for it: the value at each trial, the derivatives only where it goes on. */
    private final class Whitened implements ValueAndJacobianFunction {

        private final Ar1Errors errors;

        Whitened(Ar1Errors errors) {
            this.errors = errors;
        }

        @Override
        public RealVector computeValue(double[] point) {
            return new ArrayRealVector(errors.whitened(series(point)), false);
        }

        @Override
        public RealMatrix computeJacobian(double[] point) {
            return errors.whitened(jacobian(point));
        }

        @Override
        public Pair<RealVector, RealMatrix> value(RealVector point) {
            double[] values = point.toArray();
            return new Pair<>(computeValue(values), computeJacobian(values));
        }
    }
}
