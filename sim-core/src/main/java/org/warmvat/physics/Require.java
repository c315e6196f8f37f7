package org.warmvat.physics;

import java.util.Locale;

/** Range checks that name the quantity, the value found and what is allowed; NaN is always refused. */
public final class Require {

    private Require() {}

    /**
     * Returns a value that lies in a range, both ends allowed.
     *
     * @param what the quantity with its unit, as the message shall name it
     * @param value the value to check
     * @param least the least value allowed
     * @param most the largest value allowed
     * @return {@code value}
     * @throws IllegalArgumentException if the value is outside the range or not a number
     */
    public static double within(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    what + " " + text(value) + ", expected " + text(least) + " to " + text(most));
        }
        return value;
    }

    private static String text(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
