package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Exact: how runs are numbered and mixed, and that things are dealt out evenly. */
class SaltelliSampleTest {

    private static final int INPUTS = 3;
    private static final int ROWS = 20;
    private static final SaltelliSample SAMPLE = new SaltelliSample(INPUTS, ROWS, 7);

    @Test
    void ofEachRowTheTwoDrawsComeFirstAndThenOneMixedForEachInput() {
        double[][] points = new ShiftedSobol(2 * INPUTS, 7).points(0, ROWS);
        assertEquals(ROWS * (INPUTS + 2), SAMPLE.runs());
        for (int row = 0; row < ROWS; row++) {
            double[] p = points[row];
            int first = row * (INPUTS + 2);
            assertArrayEquals(new double[] {p[0], p[1], p[2]}, SAMPLE.point(first));
            assertArrayEquals(new double[] {p[3], p[4], p[5]}, SAMPLE.point(first + 1));
            assertArrayEquals(new double[] {p[3], p[1], p[2]}, SAMPLE.point(first + 2));
            assertArrayEquals(new double[] {p[0], p[1], p[5]}, SAMPLE.point(first + 4));
            assertTrue(SAMPLE.isDraw(first) && SAMPLE.isDraw(first + 1) && !SAMPLE.isDraw(first + 2));
        }
    }

    @Test
    void thingsAreDealtOutEvenlyInTheOrderOfTheInputAndMixedWithIt() {
        int[] dealt = SAMPLE.dealt(1, 3);
        for (int set = 0; set < 2; set++) {
            int[] counts = new int[3];
            for (int row = 0; row < ROWS; row++) {
                counts[dealt[row * (INPUTS + 2) + set]]++;
            }
            for (int count : counts) {
                assertTrue(
                        count == ROWS / 3 || count == ROWS / 3 + 1,
                        List.of(counts).toString());
            }
        }
        for (int row = 0; row < ROWS; row++) {
            int first = row * (INPUTS + 2);
            assertEquals(dealt[first], dealt[first + 2], "another input changed");
            assertEquals(dealt[first + 1], dealt[first + 3], "this input changed");
            int other = (row + 1) % ROWS * (INPUTS + 2);
            boolean higher = SAMPLE.point(first)[1] > SAMPLE.point(other)[1];
            assertTrue(higher ? dealt[first] >= dealt[other] : dealt[first] <= dealt[other]);
        }
    }

    @Test
    void eachInputGetsTheAnswersOfItsOwnMixedRuns() {
        double[] answers = IntStream.range(0, SAMPLE.runs())
                .mapToDouble(run -> SAMPLE.point(run)[1])
                .toArray();
        List<SobolIndices> indices = SAMPLE.indices(answers, 1);
        assertEquals(0, indices.get(0).total());
        assertEquals(0, indices.get(2).total());
        assertEquals(1, indices.get(1).total(), 0.1);
        assertEquals(
                "2 answers, expected 100",
                assertThrows(IllegalArgumentException.class, () -> SAMPLE.indices(new double[2], 1))
                        .getMessage());
    }
}
