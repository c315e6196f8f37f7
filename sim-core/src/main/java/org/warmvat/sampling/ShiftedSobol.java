package org.warmvat.sampling;

import java.util.Arrays;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Points of a Sobol sequence under a random digital shift: every binary digit of a coordinate is turned or left by the same random
 * bits in all points, which keeps the net and makes the points differ by seed (Owen 2003, Quasi-Monte Carlo sampling; direction
 * numbers by Joe and Kuo 2008, as Commons Math has them).
 *
 * <p>Point k is the same whether the points before it were made or not, so that parts of a study can be done apart.
 */
public final class ShiftedSobol {

    private static final int BITS = 52;
    private static final double SCALE = 0x1p52;
    private static final int MOST_DIMENSIONS = 1000;

    private final int dimensions;
    private final long[] shift;

    /**
     * A sequence.
     *
     * @param dimensions coordinates of a point, 1 to 1000
     * @param seed the same seed gives the same points
     * @throws IllegalArgumentException when there are fewer or more dimensions
     */
    public ShiftedSobol(int dimensions, long seed) {
        if (dimensions < 1 || dimensions > MOST_DIMENSIONS) {
            throw new IllegalArgumentException("dimensions " + dimensions + ", expected 1 to " + MOST_DIMENSIONS);
        }
        this.dimensions = dimensions;
        Well19937c random = new Well19937c(seed);
        shift = new long[dimensions];
        Arrays.setAll(shift, i -> random.nextLong() >>> (Long.SIZE - BITS));
    }

    /**
     * Some points in a row.
     *
     * @param first index of the first, 0 or more
     * @param count how many
     * @return by point and coordinate, above 0 and below 1
     */
    public double[][] points(int first, int count) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        double[][] points = new double[count][];
        for (int k = 0; k < count; k++) {
            points[k] = k == 0 && first > 0 ? sequence.skipTo(first) : sequence.nextVector();
            for (int i = 0; i < dimensions; i++) {
                long digits = (long) (points[k][i] * SCALE) ^ shift[i];
                // the middle of a cell of 2^-52: neither end is reached, where a normal would be infinite
                points[k][i] = (digits + 0.5) / SCALE;
            }
        }
        return points;
    }
}
