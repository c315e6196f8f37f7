package org.warmvat.weather;

/** Plain decimal numbers; unlike the Java language's own reading it takes no NaN, infinity, hex or type suffix. */
final class Decimal {
    private Decimal() {}

    /** Whether a text is a decimal number with a point, such as {@code -12.5} or {@code 1e-3}. */
    static boolean isNumber(String text) {
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
