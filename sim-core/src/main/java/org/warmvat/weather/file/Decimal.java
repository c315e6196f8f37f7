package org.warmvat.weather.file;

/** Plain decimal numbers; unlike the Java language's own reading it takes no NaN, infinity, hex or type suffix. */
public final class Decimal {
    /** The powers of ten up to which a division of whole numbers below 2^53 is rounded once, and so rightly. */
    private static final double[] TENS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private Decimal() {}

    /**
     * The value of a decimal number, the same to the last bit as the Java language reads it. Numbers of up to 15 digits without exponent,
     * which is nearly all of a weather file, are read without its slower general way.
     *
     * @param text a number by {@link #isNumber}
     */
    static double value(String text) {
        boolean negative = text.charAt(0) == '-';
        int from = negative || text.charAt(0) == '+' ? 1 : 0;
        if (text.length() - from >= TENS.length) {
            return Double.parseDouble(text);
        }
        long digits = 0;
        int point = text.length() - 1;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '.') {
                point = i;
            } else if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
            } else {
                return Double.parseDouble(text);
            }
        }
        double size = digits / TENS[text.length() - 1 - point];
        return negative ? -size : size;
    }

    /** Whether a text is a decimal number with a point, such as {@code -12.5} or {@code 1e-3}. */
    public static boolean isNumber(String text) {
        int length = text.length();
        int i = length > 0 && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        int whole = digits(text, i);
        int next = i + whole;
        int fraction = 0;
        if (next < length && text.charAt(next) == '.') {
            fraction = digits(text, next + 1);
            next += 1 + fraction;
        }
        if (whole + fraction == 0) {
            return false;
        }
        return next == length || isExponent(text, next);
    }

    private static boolean isExponent(String text, int at) {
        if (text.charAt(at) != 'e' && text.charAt(at) != 'E') {
            return false;
        }
        int i = at + 1;
        if (i < text.length() && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
            i++;
        }
        int digits = digits(text, i);
        return digits > 0 && digits <= 3 && i + digits == text.length();
    }

    private static int digits(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i - from;
    }
}
