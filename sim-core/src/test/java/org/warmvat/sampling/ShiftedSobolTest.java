package org.warmvat.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

/**
 * The sequence beneath, against points by an independent library (SciPy; version and call stand in the file) in dimensions up to the
 * thousandth, and what a digital shift keeps of a net.
 */
class ShiftedSobolTest {

    @Test
    void pointsAreThoseOfJoeAndKuo() {
        ReferenceTable table = ReferenceTable.read("sobol-points.csv");
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(1000);
        for (double[] row : table.rows()) {
            double[] point = sequence.skipTo((int) row[0]);
            for (int column = 1; column < row.length; column++) {
                int dimension = Integer.parseInt(table.head().get(column));
                assertEquals(row[column], point[dimension - 1], "point " + (int) row[0] + ", dimension " + dimension);
            }
        }
        assertEquals(23, table.rows().size());
    }

    /** The first point of the sequence is the corner, so that it shows the shift. */
    @Test
    void aShiftTurnsTheSameDigitsOfAllPoints() {
        double[][] shifted = new ShiftedSobol(40, 3).points(0, 4096);
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(40);
        for (double[] point : shifted) {
            double[] plain = sequence.nextVector();
            for (int i = 0; i < plain.length; i++) {
                assertEquals(digits(plain[i]), digits(point[i]) ^ digits(shifted[0][i]));
            }
        }
    }

    private static long digits(double coordinate) {
        return (long) (coordinate * 0x1p52);
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
