package org.warmvat.cli.answer;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers with a fixed count of decimals, a hundred thousand of them without a formatter each. */
final class Decimals {

    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000};
    private static final double LARGEST = 1e8;

    private Decimals() {}

    /**
     * Appends a value rounded to some decimals, without trailing zeros.
     *
     * @param decimals 0 to 7
     */
    static void append(StringBuilder text, double value, int decimals) {
        if (!(Math.abs(value) < LARGEST)) {
            text.append(new BigDecimal(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .stripTrailingZeros()
                    .toPlainString());
            return;
        }
        long scaled = Math.round(value * POWERS[decimals]);
        if (scaled < 0) {
            text.append('-');
            scaled = -scaled;
        }
        text.append(scaled / POWERS[decimals]);
        fraction(text, scaled % POWERS[decimals], decimals);
    }

    private static void fraction(StringBuilder text, long fraction, int decimals) {
        if (fraction == 0) {
            return;
        }
        text.append('.');
        long rest = fraction;
        for (int place = decimals - 1; rest > 0; place--) {
            text.append((char) ('0' + rest / POWERS[place]));
            rest %= POWERS[place];
        }
    }
}
