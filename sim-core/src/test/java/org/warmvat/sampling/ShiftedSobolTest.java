package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

/**
 * The sequence beneath, against the first points printed with Joe and Kuo's direction numbers (2008, Constructing Sobol sequences with
 * better two-dimensional projections; the first ten points in three dimensions, from memory), and what a digital shift keeps of a net.
 */
class ShiftedSobolTest {

    @Test
    void theFirstPointsAreThoseOfJoeAndKuo() {
        double[][] printed = {
            {0, 0, 0},
            {0.5, 0.5, 0.5},
            {0.75, 0.25, 0.25},
            {0.25, 0.75, 0.75},
            {0.375, 0.375, 0.625},
            {0.875, 0.875, 0.125},
            {0.625, 0.125, 0.875},
            {0.125, 0.625, 0.375},
            {0.1875, 0.3125, 0.9375},
            {0.6875, 0.8125, 0.4375}
        };
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(3);
        for (double[] point : printed) {
            assertArrayEquals(point, sequence.nextVector(), 0);
        }
    }

    @Test
    void everyCellOfTheNetHoldsAsManyPoints() {
        int[][] cells = new int[4][4];
        for (double[] point : new ShiftedSobol(2, 7).points(0, 1024)) {
            cells[(int) (4 * point[0])][(int) (4 * point[1])]++;
        }
        for (int[] row : cells) {
            assertArrayEquals(new int[] {64, 64, 64, 64}, row);
        }
    }

    @Test
    void pointsMadeApartAreTheSame() {
        double[][] whole = new ShiftedSobol(5, 11).points(0, 300);
        double[][] part = new ShiftedSobol(5, 11).points(120, 50);
        for (int k = 0; k < part.length; k++) {
            assertArrayEquals(whole[120 + k], part[k], 0);
        }
        double[][] otherSeed = new ShiftedSobol(5, 12).points(0, 1);
        assertFalse(Arrays.equals(whole[0], otherSeed[0]));
    }

    @Test
    void tooManyDimensionsAreRefused() {
        assertEquals(
                "dimensions 1001, expected 1 to 1000",
                assertThrows(IllegalArgumentException.class, () -> new ShiftedSobol(1001, 1))
                        .getMessage());
    }
}
