package org.warmvat.regression;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** Fitted parameters, and how well a series with AR(1) errors knows them. */
public final class Fitted {

    private final List<Parameter> parameters;
    private final double[] values;
    private final Linearised line;
    private final double rho;
    private final Optional<RealMatrix> covariance;
    private final double widening;

    Fitted(List<Parameter> parameters, double[] values, Linearised line, double rho) {
        this(
                parameters,
                values,
                line,
                rho,
                line.isSingular() ? Optional.empty() : Optional.of(new Ar1Likelihood(line).covariance()),
                1);
    }

    Fitted(
            List<Parameter> parameters,
            double[] values,
            Linearised line,
            double rho,
            Optional<RealMatrix> covariance,
            double widening) {
        this.parameters = List.copyOf(parameters);
        this.values = values.clone();
        this.line = line;
        this.rho = rho;
        this.covariance = covariance;
        this.widening = widening;
    }

    /** The same with every interval and draw wider by a factor, where more is known of its scatter than the residuals say. */
    public Fitted widened(double factor) {
        return new Fitted(parameters, values, line, rho, covariance, widening * factor);
    }

    /**
     * What a part of the series alone says of one parameter, its level left free.
     *
     * @param value the parameter's value there
     * @param sd its standard deviation, from the whole series' variance
     */
    public record Local(double value, double sd) {}

    /**
     * Looks at a part of the series; not where {@link #isSingular}.
     *
     * @param index which parameter
     * @param from first observation
     * @param end after the last
     */
    public Local local(int index, int from, int end) {
        double[] timeS = new double[end - from];
        RealMatrix columns = new Array2DRowRealMatrix(timeS.length, 2);
        for (int row = 0; row < timeS.length; row++) {
            timeS[row] = line.at().timeS(from + row);
            columns.setRow(row, new double[] {line.jacobian().getEntry(from + row, index), 1});
        }
        Observations part = new Observations(timeS, new double[timeS.length]);
        Linearised.Best best = new Linearised(part, columns, line.residuals().getSubVector(from, timeS.length))
                .under(new Ar1Errors(part, rho));
        double variance = line.under(new Ar1Errors(line.at(), rho)).squares() / line.degreesOfFreedom();
        double sd = best.root().getRowVector(0).getNorm() * Math.sqrt(variance);
        return new Local(values[index] + best.step().getEntry(0), sd);
    }

    /** The best values, in the order of the parameters; a copy. */
    public double[] values() {
        return values.clone();
    }

    /** Observed less fitted; a copy. */
    public double[] residuals() {
        return line.residuals().toArray();
    }

    /** Correlation of errors a median step apart. */
    public double rho() {
        return rho;
    }

    /** Standard deviation of the residuals. */
    public double residualSd() {
        return line.residuals().getNorm() / Math.sqrt(line.degreesOfFreedom());
    }

    /** Correlation of neighbouring residuals as they are, gaps left out. */
    public double residualLag1() {
        double[] residuals = residuals();
        double products = 0;
        double squares = 0;
        for (int i = 1; i < residuals.length; i++) {
            if (!line.at().startsAfresh(i)) {
                products += residuals[i] * residuals[i - 1];
                squares += 0.5 * (residuals[i] * residuals[i] + residuals[i - 1] * residuals[i - 1]);
            }
        }
        return squares == 0 ? 0 : products / squares;
    }

    /** Whether the series says nothing of a parameter, or of some only together: then nothing has an interval. */
    public boolean isSingular() {
        return covariance.isEmpty();
    }

    /** Correlation of two parameters' errors. */
    public double correlation(int one, int other) {
        RealMatrix matrix = covariance.orElseThrow();
        return matrix.getEntry(one, other) / Math.sqrt(matrix.getEntry(one, one) * matrix.getEntry(other, other));
    }

    /** The interval of a parameter. */
    public Range95 range(int index) {
        return range(point -> point[index]);
    }

    /** The interval of something that follows from the parameters, as straight about them as their intervals are short. */
    public Range95 range(ToDoubleFunction<double[]> derived) {
        RealVector slope = new ArrayRealVector(parameters.size());
        for (int i = 0; i < parameters.size(); i++) {
            double step = parameters.get(i).step();
            double[] up = values();
            double[] down = values();
            up[i] = parameters.get(i).held(up[i] + step);
            down[i] = parameters.get(i).held(down[i] - step);
            slope.setEntry(i, (derived.applyAsDouble(up) - derived.applyAsDouble(down)) / (up[i] - down[i]));
        }
        double sd = Math.sqrt(slope.dotProduct(covariance.orElseThrow().operate(slope)));
        double half =
                new TDistribution(null, line.degreesOfFreedom()).inverseCumulativeProbability(0.975) * sd * widening;
        double value = derived.applyAsDouble(values());
        return new Range95(value - half, value + half);
    }

    /** Draws of the parameters from their covariance, within their bounds. */
    public List<double[]> draws(int count, long seed) {
        RealMatrix root = new CholeskyDecomposition(covariance.orElseThrow(), 1e-6, 0).getL();
        Random random = new Random(seed);
        List<double[]> draws = new ArrayList<>();
        for (int draw = 0; draw < count; draw++) {
            RealVector normal = new ArrayRealVector(parameters.size());
            for (int i = 0; i < parameters.size(); i++) {
                normal.setEntry(i, random.nextGaussian());
            }
            draws.add(moved(root.operate(normal)));
        }
        return draws;
    }

    /**
     * Draws of the parameters from residuals put together anew from stretches as they are, so that whatever memory they have stays
     * in them (moving blocks: Künsch 1989, Annals of Statistics 17, 1217-1241); the model is taken as straight about the best
     * parameters.
     *
     * @param blockS length of a stretch, s
     * @param count how many draws
     * @param seed the same draws for the same seed
     */
    public List<double[]> blockDraws(double blockS, int count, long seed) {
        int length = (int) Math.round(blockS / line.at().medianStepS());
        MovingBlocks blocks = new MovingBlocks(residuals(), length, seed);
        double lost = Math.sqrt((double) line.at().size() / line.degreesOfFreedom());
        Ar1Errors errors = new Ar1Errors(line.at(), rho);
        List<double[]> draws = new ArrayList<>();
        for (int draw = 0; draw < count; draw++) {
            RealVector left = new ArrayRealVector(blocks.next(), false).mapMultiply(lost);
            draws.add(moved(new Linearised(line.at(), line.jacobian(), left)
                    .under(errors)
                    .step()));
        }
        return draws;
    }

    private double[] moved(RealVector by) {
        double[] point = values();
        Arrays.setAll(point, i -> parameters.get(i).held(point[i] + widening * by.getEntry(i)));
        return point;
    }
}
