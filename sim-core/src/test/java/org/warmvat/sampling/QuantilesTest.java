package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Exact: definition 7 of Hyndman and Fan (1996) on values whose quantiles are plain, and NumPy 2.4.6's
 * {@code numpy.quantile([3.1, 0.2, 7.7, 5.5, 1.9, 2.4, 9.9], [0.05, 0.5, 0.95], method='linear')}.
 */
class QuantilesTest {

    @Test
    void quantilesLieOnTheLineBetweenNeighbours() {
        double[] falling =
                IntStream.rangeClosed(0, 100).mapToDouble(i -> 100 - i).toArray();
        assertEquals(new Quantiles(5, 50, 95), Quantiles.of(falling));
        assertEquals(1.1, Quantiles.of(2, 1, 3).p5(), 1e-12);
        Quantiles few = Quantiles.of(3.1, 0.2, 7.7, 5.5, 1.9, 2.4, 9.9);
        assertEquals(0.71, few.p5(), 1e-14);
        assertEquals(3.1, few.p50());
        assertEquals(9.239999999999998, few.p95(), 1e-14);
        assertEquals(new Quantiles(7, 7, 7), Quantiles.of(7));
    }

    @Test
    void whatIsNoNumberHasNoBand() {
        assertEquals(Double.NaN, Quantiles.of(1, Double.NaN, 3).p50());
        assertEquals(Double.NaN, Quantiles.of().p5());
    }
}
