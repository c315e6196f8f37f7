package org.warmvat.design.keys;

import java.math.BigDecimal;

/** Numbers and texts as messages show them. */
public final class Shown {

    private static final int MOST_LETTERS = 60;
    private static final double TINY = 1e-6;
    private static final double HUGE = 1e9;

    private Shown() {}

    /** A number without an exponent for everyday sizes and without a trailing ".0". */
    public static String number(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < HUGE;
        boolean everyday = Math.abs(value) >= TINY && Math.abs(value) < HUGE;
        return whole
                ? Long.toString((long) value)
                : everyday ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString() : Double.toString(value);
    }

    /** A text in quotes, cut where long, with control characters made visible. */
    public static String quoted(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints()
                .limit(MOST_LETTERS)
                .forEach(c -> shown.append(Character.isISOControl(c) ? "?" : Character.toString(c)));
        return shown.append(text.codePointCount(0, text.length()) > MOST_LETTERS ? "...\"" : "\"")
                .toString();
    }
}
