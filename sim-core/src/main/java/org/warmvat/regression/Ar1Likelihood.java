package org.warmvat.regression;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * How strongly residuals remember: the correlation over a median step with the greatest restricted likelihood, the model being
 * straight about its best parameters (Patterson and Thompson 1971, Biometrika 58, 545-554). The plain lag-1 correlation of
 * residuals is too low, since the fitted parameters have taken part of the slow errors away.
 */
final class Ar1Likelihood {

    private static final int SUPPOSED = 60;

    private final Linearised line;
    private final double leastLogForgotten;

    Ar1Likelihood(Linearised line) {
        this.line = line;
        int stretches = 0;
        for (int i = 0; i < line.at().size(); i++) {
            stretches += line.at().startsAfresh(i) ? 1 : 0;
        }
        // an error that outlasts its stretch cannot be told from a wrong start
        leastLogForgotten = Math.log((double) stretches / line.at().size());
    }

    /** The most likely correlation, sought in the logarithm of what is forgotten over a step. */
    double rho() {
        double logForgotten = new BrentOptimizer(1e-6, 1e-8)
                .optimize(
                        GoalType.MAXIMIZE,
                        new MaxEval(200),
                        new UnivariateObjectiveFunction(forgotten -> of(1 - Math.exp(forgotten))),
                        new SearchInterval(leastLogForgotten, 0))
                .getPoint();
        return 1 - Math.exp(logForgotten);
    }

    /**
     * Covariance of the parameters. A short series knows its own memory badly, and the most likely memory alone makes intervals too
     * short: this is the mean over all correlations from 0 to 1, each as likely as the residuals make it, and the variance of the
     * best parameters between them.
     */
    RealMatrix covariance() {
        RealMatrix covariance = new Array2DRowRealMatrix(line.parameters(), line.parameters());
        RealVector mean = new ArrayRealVector(line.parameters());
        for (Map.Entry<Double, Double> supposed : shares().entrySet()) {
            Linearised.Best best = line.under(new Ar1Errors(line.at(), supposed.getKey()));
            double share = supposed.getValue();
            covariance = covariance
                    .add(line.covariance(best).scalarMultiply(share))
                    .add(best.step().outerProduct(best.step()).scalarMultiply(share));
            mean = mean.add(best.step().mapMultiply(share));
        }
        return covariance.subtract(mean.outerProduct(mean));
    }

    /** Correlations that may have been, with their shares; none is preferred beforehand. */
    private SortedMap<Double, Double> shares() {
        SortedMap<Double, Double> shares = new TreeMap<>();
        for (int i = 0; i < SUPPOSED; i++) {
            double logForgotten = leastLogForgotten * (i + 0.5) / SUPPOSED;
            double rho = 1 - Math.exp(logForgotten);
            shares.put(rho, of(rho) + logForgotten);
        }
        double most = Collections.max(shares.values());
        shares.replaceAll((rho, logShare) -> Math.exp(logShare - most));
        double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        shares.replaceAll((rho, share) -> share / sum);
        return shares;
    }

    /** Restricted log-likelihood, but for a constant. */
    private double of(double rho) {
        Ar1Errors errors = new Ar1Errors(line.at(), rho);
        Linearised.Best best = line.under(errors);
        return -0.5
                * (line.degreesOfFreedom() * Math.log(best.squares())
                        + errors.logDeterminant()
                        + best.logDeterminant());
    }
}
