package org.warmvat.sampling;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How far an input that is not known well may lie.
 *
 * @param low the value that 5 in 100 stay below; of an even spread its lower end
 * @param high the value that 5 in 100 exceed; of an even spread its upper end
 * @param shape bell or even
 */
public record Spread(double low, double high, Shape shape) {

    /** Distance of the 95 % point of the standard normal from its middle. */
    private static final double POINT_95 = 1.6448536269514722;

    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

    /** How the values lie between. */
    public enum Shape {
        /** A normal distribution. */
        NORMAL,
        /** All values between the ends alike. */
        EVEN
    }

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException unless both are numbers and low is below high
     */
    public Spread {
        if (!(low < high) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException("low " + low + ", expected a number below high " + high);
        }
    }

    /**
     * The value at a share of all values.
     *
     * @param share above 0 and below 1
     */
    public double quantile(double share) {
        if (shape == Shape.EVEN) {
            return low + share * (high - low);
        }
        double middle = (low + high) / 2;
        return middle + (high - low) / (2 * POINT_95) * STANDARD.inverseCumulativeProbability(share);
    }
}
