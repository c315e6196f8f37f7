package org.warmvat.cli.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one way in which this program writes numbers: six significant digits for other programs, three for people, the same in every
 * locale, without trailing zeros and, where a number is neither huge nor tiny, without powers of ten.
 */
public final class Numerals {

    private static final MathContext FOR_PROGRAMS = new MathContext(6, RoundingMode.HALF_EVEN);
    private static final MathContext FOR_PEOPLE = new MathContext(3, RoundingMode.HALF_UP);
    private static final double TINY = 1e-6;
    private static final double HUGE = 1e15;
    private static final double SIX_DIGITS = 1e5;
    private static final double CLEAR_OF_HALF = 0.499;

    private Numerals() {}

    /** Six significant digits: {@code 1234.57}, {@code 0.0005}, {@code 8760}; nothing for what is no finite number. */
    public static String six(double value) {
        return Double.isFinite(value) ? plain(sixDigits(value), value) : "";
    }

    /** By a long, since tables hold a million of them; exactly where that might take the other side of a half, or is not made for it. */
    private static BigDecimal sixDigits(double value) {
        int decimals = 5 - (int) Math.floor(Math.log10(Math.abs(value)));
        double scaled = value * Math.pow(10, decimals);
        double nearest = Math.rint(scaled);
        boolean sure = Math.abs(scaled - nearest) < CLEAR_OF_HALF && Math.abs(nearest) >= SIX_DIGITS;
        return sure && isUsual(value)
                ? BigDecimal.valueOf((long) nearest, decimals)
                : new BigDecimal(value, FOR_PROGRAMS);
    }

    private static boolean isUsual(double value) {
        return Math.abs(value) >= TINY && Math.abs(value) < HUGE;
    }

    /** Three significant digits: {@code 1230}, {@code 28.0}, {@code 0.0345}; a small whole number is {@code 5}. */
    public static String three(double value) {
        if (!Double.isFinite(value)) {
            return "–";
        }
        BigDecimal rounded = new BigDecimal(value, FOR_PEOPLE);
        boolean whole = value == Math.rint(value) || rounded.scale() <= 0;
        return whole ? plain(rounded, value) : padded(rounded).toPlainString();
    }

    private static BigDecimal padded(BigDecimal rounded) {
        return rounded.setScale(rounded.scale() + FOR_PEOPLE.getPrecision() - rounded.precision());
    }

    /** The shortest decimal that reads back as the same number: {@code 0.35}, {@code 120}; for what a user has written. */
    public static String exact(double value) {
        return Double.isFinite(value) ? plain(BigDecimal.valueOf(value), value) : "–";
    }

    /** A fixed count of decimals: {@code 36.0}. */
    public static String fixed(double value, int decimals) {
        return Double.isFinite(value)
                ? new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
                : "–";
    }

    private static String plain(BigDecimal digits, double value) {
        if (digits.signum() == 0) {
            return "0";
        }
        BigDecimal bare = digits.stripTrailingZeros();
        return isUsual(value) ? bare.toPlainString() : bare.toString();
    }
}
