package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Exact: definition 7 of Hyndman and Fan (1996) on values whose quantiles are plain. */
class QuantilesTest {

    @Test
    void quantilesLieOnTheLineBetweenNeighbours() {
        double[] falling =
                IntStream.rangeClosed(0, 100).mapToDouble(i -> 100 - i).toArray();
        assertEquals(new Quantiles(5, 50, 95), Quantiles.of(falling));
        assertEquals(1.1, Quantiles.of(2, 1, 3).p5(), 1e-12);
        assertEquals(new Quantiles(7, 7, 7), Quantiles.of(7));
    }

    @Test
    void whatIsNoNumberHasNoBand() {
        assertEquals(Double.NaN, Quantiles.of(1, Double.NaN, 3).p50());
        assertEquals(Double.NaN, Quantiles.of().p5());
    }
}
