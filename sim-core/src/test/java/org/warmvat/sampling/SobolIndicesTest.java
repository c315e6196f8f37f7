package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

/**
 * Sobol' indices of functions whose indices are known: Ishigami and Homma (1990) with a = 7, b = 0.1, whose variances follow from the
 * integrals by hand (Saltelli and others, Global Sensitivity Analysis, 2008, chapter 4, exercise 5, as quoted in SciPy's own tests of
 * {@code scipy.stats.sobol_indices}), and a straight line; and the estimators against SciPy's on the same points.
 */
class SobolIndicesTest {

    private static final int DRAWS = 4096;

    private static double[] variances() {
        double a = 7;
        double b = 0.1;
        double pi4 = Math.pow(Math.PI, 4);
        double first = Math.pow(1 + b * pi4 / 5, 2) / 2;
        double second = a * a / 8;
        double together = b * b * pi4 * pi4 * (1.0 / 18 - 1.0 / 50);
        return new double[] {first, second, together, first + second + together};
    }

    private static double ishigami(double[] point) {
        double x1 = Math.PI * (2 * point[0] - 1);
        double x2 = Math.PI * (2 * point[1] - 1);
        double x3 = Math.PI * (2 * point[2] - 1);
        return Math.sin(x1) + 7 * Math.pow(Math.sin(x2), 2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
    }

    private static SobolIndices[] indices(int inputs, int draws, ToDoubleFunction<double[]> answer) {
        SaltelliSample sample = new SaltelliSample(inputs, draws, 3);
        double[] answers = IntStream.range(0, sample.runs())
                .mapToDouble(run -> answer.applyAsDouble(sample.point(run)))
                .toArray();
        return sample.indices(answers, 1).toArray(SobolIndices[]::new);
    }

    @Test
    void ishigamisFunctionAsPublished() {
        double[] v = variances();
        double[] first = {v[0] / v[3], v[1] / v[3], 0};
        double[] total = {(v[0] + v[2]) / v[3], v[1] / v[3], v[2] / v[3]};
        SobolIndices[] found = indices(3, DRAWS, SobolIndicesTest::ishigami);
        for (int i = 0; i < 3; i++) {
            assertEquals(first[i], found[i].firstOrder(), 3 * found[i].error(), "first order of " + i);
            assertEquals(total[i], found[i].total(), 3 * found[i].error(), "total of " + i);
            assertTrue(found[i].error() < 0.03, "error of " + i + ": " + found[i].error());
        }
    }

    /** The same numbers from the same points: the bound is that of rounding. */
    @Test
    void theEstimatorsAreThoseOfAnIndependentLibrary() {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(6);
        double[][] points = new double[256][];
        sequence.nextVector();
        for (int k = 0; k < points.length; k++) {
            points[k] = sequence.nextVector();
        }
        double[] a = answers(points, -1, 0);
        double[] b = answers(points, -1, 3);
        for (double[] row : ReferenceTable.read("ishigami-estimates.csv").rows()) {
            SobolIndices found = SobolIndices.estimate(a, b, answers(points, (int) row[0] - 1, 0), 1);
            assertEquals(row[1], found.firstOrder(), 1e-12, "first order of " + row[0]);
            assertEquals(row[2], found.total(), 1e-12, "total of " + row[0]);
        }
    }

    /** Of the coordinates from one on, with one of them taken from the second half. */
    private static double[] answers(double[][] points, int exchanged, int from) {
        return Arrays.stream(points)
                .mapToDouble(point -> {
                    double[] x = {point[from], point[from + 1], point[from + 2]};
                    if (exchanged >= 0) {
                        x[exchanged] = point[exchanged + 3];
                    }
                    return ishigami(x);
                })
                .toArray();
    }

    @Test
    void aStraightLineHasSharesBySquaresOfItsSlopes() {
        SobolIndices[] found = indices(3, DRAWS, point -> 3 * point[0] + 2 * point[1] + point[2]);
        double[] expected = {9.0 / 14, 4.0 / 14, 1.0 / 14};
        for (int i = 0; i < 3; i++) {
            assertEquals(expected[i], found[i].firstOrder(), 0.01);
            assertEquals(expected[i], found[i].total(), 0.01);
        }
    }

    @Test
    void whatDoesNotVaryHasNoShares() {
        double[] same = {2, 2, 2};
        assertEquals(new SobolIndices(0, 0, 0), SobolIndices.estimate(same, same, same, 1));
        assertThrows(IllegalArgumentException.class, () -> SobolIndices.estimate(same, same, new double[] {1, 2}, 1));
    }
}
