package org.warmvat.regression;

import java.util.Arrays;
import java.util.Random;

/** Series put together from stretches of another, each beginning anywhere (Künsch 1989). */
final class MovingBlocks {

    private final double[] series;
    private final int block;
    private final Random random;

    /**
     * Stretches of a series.
     *
     * @param series the series; its mean is taken out
     * @param block length of a stretch, held between 1 and the whole
     * @param seed decides where stretches begin
     */
    MovingBlocks(double[] series, int block, long seed) {
        double mean = Arrays.stream(series).average().orElseThrow();
        this.series = Arrays.stream(series).map(value -> value - mean).toArray();
        this.block = Math.max(1, Math.min(block, series.length));
        random = new Random(seed);
    }

    /** The next series, as long as the first. */
    double[] next() {
        double[] made = new double[series.length];
        for (int at = 0; at < made.length; at += block) {
            int from = random.nextInt(series.length - block + 1);
            System.arraycopy(series, from, made, at, Math.min(block, made.length - at));
        }
        return made;
    }
}
