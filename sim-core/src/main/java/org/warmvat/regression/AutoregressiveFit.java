package org.warmvat.regression;

import java.util.List;

/**
 * Least squares with AR(1) errors: parameters, the residuals' memory, and parameters again on quasi-differenced residuals until
 * neither moves (Cochrane and Orcutt 1949).
 */
public final class AutoregressiveFit {

    private static final int MOST_ROUNDS = 30;
    private static final int FREE_ROUNDS = 4;
    private static final double SETTLED = 1e-2;

    private AutoregressiveFit() {}

    /**
     * Fits a model to a series.
     *
     * @param observed the series; more observations than parameters
     * @param curve the model
     * @param parameters what is fitted
     * @throws FitFailure when the model has no finite value somewhere or no best fit is found
     */
    public static Fitted of(Observations observed, Curve curve, List<Parameter> parameters) {
        if (observed.size() <= parameters.size()) {
            throw new FitFailure(observed.size() + " observations, expected more than " + parameters.size());
        }
        LeastSquares squares = new LeastSquares(observed, curve, parameters);
        double rho = 0;
        double[] best = squares.best(
                new Ar1Errors(observed, rho),
                parameters.stream().mapToDouble(Parameter::start).toArray());
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Linearised line = squares.linearised(best);
            if (line.isSingular()) {
                return new Fitted(parameters, best, line, rho);
            }
            double remembered = new Ar1Likelihood(line).rho();
            if (Math.abs(remembered - rho) < SETTLED * (1 - rho)) {
                return new Fitted(parameters, best, line, rho);
            }
            // parameters and memory may chase one another: from then on half-way only
            rho = round < FREE_ROUNDS ? remembered : 1 - Math.sqrt((1 - rho) * (1 - remembered));
            best = squares.best(new Ar1Errors(observed, rho), best);
        }
        // a memory that still swings by a hundredth moves no interval that is printed
        return new Fitted(parameters, best, squares.linearised(best), rho);
    }
}
