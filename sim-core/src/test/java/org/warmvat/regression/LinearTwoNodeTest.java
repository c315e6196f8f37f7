package org.warmvat.regression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * Exact: a tank of two nodes, contents and wall, is linear in its starting temperature, its heat and its surroundings, so that
 * the best fit and its covariance are those of generalised least squares with the errors' whole covariance matrix.
 */
class LinearTwoNodeTest {

    private static final int ROWS = 150;
    private static final double RHO = 0.9;
    private static final double[] TRUTH = {30, 1, 10};

    @Test
    void theFitIsTheExactRegression() {
        Observations observed = observed(1);
        RealMatrix columns = columns(observed);
        Fitted fitted = fitted(observed, columns);

        RealMatrix weights = new LUDecomposition(covariance(observed, fitted.rho()))
                .getSolver()
                .getInverse();
        RealMatrix normal = columns.transpose().multiply(weights).multiply(columns);
        RealMatrix inverse = new LUDecomposition(normal).getSolver().getInverse();
        RealVector values = new ArrayRealVector(observed.values());
        RealVector best = inverse.operate(columns.transpose().operate(weights.operate(values)));
        RealVector left = values.subtract(columns.operate(best));
        double variance = left.dotProduct(weights.operate(left)) / (observed.size() - 3);
        Linearised line = new Linearised(observed, columns, left);
        RealMatrix covariance = line.covariance(line.under(new Ar1Errors(observed, fitted.rho())));
        for (int i = 0; i < 3; i++) {
            assertEquals(best.getEntry(i), fitted.values()[i], 1e-7);
            assertEquals(
                    variance * inverse.getEntry(i, i), covariance.getEntry(i, i), 1e-8 * covariance.getEntry(i, i));
        }
    }

    /**
     * 400 logs of 15 correlation times each: the interval holds the truth in 90 to 98 % of them, the interval that takes errors
     * as independent in no more than 60 %.
     */
    @Test
    void theIntervalHoldsTheTruthAsOftenAsItSays() {
        int[] held = new int[3];
        int heldIfIndependent = 0;
        for (int seed = 1; seed <= 400; seed++) {
            Observations observed = observed(seed);
            RealMatrix columns = columns(observed);
            Fitted fitted = fitted(observed, columns);
            for (int i = 0; i < 3; i++) {
                held[i] += fitted.range(i).holds(TRUTH[i]) ? 1 : 0;
            }
            Linearised line = new Linearised(observed, columns, new ArrayRealVector(fitted.residuals()));
            Linearised.Best independent = line.under(new Ar1Errors(observed, 0));
            double sd = Math.sqrt(line.covariance(independent).getEntry(1, 1));
            double value = fitted.values()[1] + independent.step().getEntry(1);
            heldIfIndependent += Math.abs(value - TRUTH[1]) < 1.96 * sd ? 1 : 0;
        }
        for (int count : held) {
            assertTrue(count >= 360 && count <= 392, "held in " + count + " of 400");
        }
        assertTrue(heldIfIndependent <= 240, "white-noise interval held in " + heldIfIndependent + " of 400");
    }

    private static Fitted fitted(Observations observed, RealMatrix columns) {
        return AutoregressiveFit.of(
                observed, point -> columns.operate(new ArrayRealVector(point)).toArray(), parameters());
    }

    private static List<Parameter> parameters() {
        return List.of(
                new Parameter("start", 25, -50, 150, 0.1),
                new Parameter("heat", 0.5, 0.1, 10, 0.01),
                new Parameter("air", 5, -50, 50, 0.1));
    }

    /** Half hours, some of them missing, errors that remember. */
    private static Observations observed(long seed) {
        Random random = new Random(seed);
        double[] timeS = new double[ROWS - 5];
        double[] values = new double[ROWS - 5];
        double error = 0;
        double innovation = 0.2 * Math.sqrt(1 - RHO * RHO);
        int at = 0;
        for (int row = 0; row < ROWS; row++) {
            error = row == 0 ? 0.2 * random.nextGaussian() : RHO * error + innovation * random.nextGaussian();
            if (row == 40 || (row >= 90 && row < 94)) {
                continue;
            }
            timeS[at] = 1800.0 * row;
            values[at++] = truth(1800.0 * row) + error;
        }
        return new Observations(timeS, values);
    }

    private static double truth(double timeS) {
        return TRUTH[0] * ofStart(timeS) + TRUTH[1] * ofHeat(timeS) + TRUTH[2] * ofAir(timeS);
    }

    private static RealMatrix columns(Observations observed) {
        RealMatrix columns = new Array2DRowRealMatrix(observed.size(), 3);
        for (int row = 0; row < observed.size(); row++) {
            double t = observed.timeS(row);
            columns.setRow(row, new double[] {ofStart(t), ofHeat(t), ofAir(t)});
        }
        return columns;
    }

    private static RealMatrix covariance(Observations observed, double rho) {
        RealMatrix covariance = new Array2DRowRealMatrix(observed.size(), observed.size());
        for (int i = 0; i < observed.size(); i++) {
            covariance.setEntry(i, i, 1);
            double memory = 1;
            for (int j = i + 1; j < observed.size() && !observed.startsAfresh(j); j++) {
                memory = Math.pow(rho, (observed.timeS(j) - observed.timeS(i)) / 1800);
                covariance.setEntry(i, j, memory);
                covariance.setEntry(j, i, memory);
            }
        }
        return covariance;
    }

    // contents 4 MJ/K, wall 0.4 MJ/K, 40 W/K between them, 20 W/K to the air: two modes
    private static final double A = 40 / 4e6;
    private static final double B = 40 / 4e5;
    private static final double C = 20 / 4e5;
    private static final double ROOT = Math.sqrt((A + B + C) * (A + B + C) - 4 * A * C);
    private static final double SLOW = 0.5 * (A + B + C - ROOT);
    private static final double FAST = 0.5 * (A + B + C + ROOT);

    /** Contents at 1 K, wall and air at 0: what becomes of the contents. */
    private static double ofStart(double t) {
        return ((FAST - A) * Math.exp(-SLOW * t) + (A - SLOW) * Math.exp(-FAST * t)) / (FAST - SLOW);
    }

    /** Air at 1 K, all else at 0. */
    private static double ofAir(double t) {
        return 1 - (FAST * Math.exp(-SLOW * t) - SLOW * Math.exp(-FAST * t)) / (FAST - SLOW);
    }

    /** 500 W into the contents from the tenth to the thirtieth hour: the sum of what each instant's heat becomes. */
    private static double ofHeat(double t) {
        return 500 / 4e6 * (sum(t - 36_000) - sum(t - 108_000));
    }

    private static double sum(double t) {
        if (t <= 0) {
            return 0;
        }
        double slow = (FAST - A) * -Math.expm1(-SLOW * t) / SLOW;
        double fast = (A - SLOW) * -Math.expm1(-FAST * t) / FAST;
        return (slow + fast) / (FAST - SLOW);
    }
}
