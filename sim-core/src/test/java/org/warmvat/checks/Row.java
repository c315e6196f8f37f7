package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * One value beside ours.
 *
 * @param kind what is claimed
 * @param quantity what it is, with its unit
 * @param published as printed
 * @param ours as computed by the program's classes
 * @param tolerance largest difference allowed
 * @param provenance how sure the published value is
 */
public record Row(Kind kind, String quantity, double published, double ours, double tolerance, Provenance provenance) {

    /** What is claimed of a row. */
    public enum Kind {
        /** Reproduced and counted. */
        COUNTED,
        /** Reproduced, but derived, common practice, or beyond the fifth of its table. */
        ALSO,
        /** Printed, but not what its own inputs give. */
        NOT_REPRODUCED
    }

    /** The difference, ours less published. */
    public double difference() {
        return ours - published;
    }

    /** Fails when the claim does not hold. */
    void hold() {
        if (kind == Kind.NOT_REPRODUCED) {
            assertTrue(Math.abs(difference()) > tolerance, quantity + " is reproduced after all: " + this);
        } else {
            assertEquals(published, ours, tolerance, quantity);
        }
    }

    /** The line of the page. */
    String line() {
        return String.format(
                        Locale.ROOT,
                        "| %s | %s | %s | %s | %s | %s%s |%n",
                        quantity,
                        plain(published),
                        rounded(ours),
                        signed(difference()),
                        plain(new BigDecimal(tolerance)
                                .round(new MathContext(2))
                                .doubleValue()),
                        provenance.words(),
                        kind == Kind.ALSO && provenance.counts() ? ", not counted" : "")
                .replace("\r", "");
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : new BigDecimal(Double.toString(value))
                        .round(new MathContext(10))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private String rounded(double value) {
        int decimals = (int) Math.max(0, Math.min(9, 1 + Math.ceil(-Math.log10(2 * tolerance) - 1e-9)));
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private String signed(double value) {
        String text = rounded(Math.abs(value));
        boolean zero = text.chars().allMatch(c -> c == '0' || c == '.');
        return zero ? text : (value < 0 ? "-" : "+") + text;
    }
}
