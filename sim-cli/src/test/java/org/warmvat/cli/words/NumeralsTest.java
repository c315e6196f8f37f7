package org.warmvat.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers for other programs, against the JDK's exact decimal expansion (java.math.BigDecimal). */
class NumeralsTest {

    private static final MathContext SIX = new MathContext(6, RoundingMode.HALF_EVEN);

    @Test
    void sixDigitsAreThoseOfTheExactExpansion() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 100_000; i++) {
            double value = random.nextDouble(-10, 10) * Math.pow(10, random.nextInt(-9, 18));
            same(value);
        }
    }

    /** Halves of the sixth digit, which in binary stand a hair to either side, and the edges of powers of ten. */
    @Test
    void halvesAndPowersOfTenToo() {
        for (int digits = 1_000_005; digits < 10_000_000; digits += 9_700) {
            for (int power = -14; power < 9; power++) {
                double half = new BigDecimal(digits).scaleByPowerOfTen(power).doubleValue();
                same(half);
                same(-Math.nextUp(half));
                same(Math.nextDown(half));
            }
        }
        for (int power = -8; power < 17; power++) {
            double ten = new BigDecimal(1).scaleByPowerOfTen(power).doubleValue();
            same(ten);
            same(Math.nextDown(ten));
            same(Math.nextUp(ten));
            same(ten * (1 - 6e-7));
            same(ten * (1 - 4e-7));
        }
    }

    private static void same(double value) {
        BigDecimal exact = new BigDecimal(value, SIX).stripTrailingZeros();
        double size = Math.abs(value);
        assertEquals(size >= 1e-6 && size < 1e15 ? exact.toPlainString() : exact.toString(), Numerals.six(value));
    }
}
