package org.warmvat.weather.made;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Persistent random series that repeat for a seed on every machine ({@link Random}'s sequence is specified). */
final class Draws {
    private static final int RUN_IN = 50;

    private final Random random;

    Draws(long seed, String stream) {
        this.random = new Random(seed * 1_000_003L + stream.hashCode());
    }

    /** A first-order autoregressive normal series of unit variance. */
    double[] persistent(int length, double persistence) {
        double innovation = Math.sqrt(1 - persistence * persistence);
        double value = random.nextGaussian();
        for (int i = 0; i < RUN_IN; i++) {
            value = persistence * value + innovation * random.nextGaussian();
        }
        double[] result = new double[length];
        for (int i = 0; i < length; i++) {
            value = persistence * value + innovation * random.nextGaussian();
            result[i] = value;
        }
        return result;
    }

    /** The next number of a normal distribution of mean 0 and variance 1. */
    double normal() {
        return random.nextGaussian();
    }

    /**
     * Replaces a stretch of a series by the quantiles of a distribution in the order of its own ranks, so that every stretch
     * has the whole distribution and no luck in its mean.
     */
    static void shape(double[] series, int from, int to, DoubleUnaryOperator quantile) {
        double[] original = Arrays.copyOfRange(series, from, to);
        Integer[] order = IntStream.range(0, original.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> original[i]));
        for (int rank = 0; rank < order.length; rank++) {
            series[from + order[rank]] = quantile.applyAsDouble((rank + 0.5) / order.length);
        }
    }
}
