package org.warmvat.cli.plot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleFunction;

/** What is seen in a picture, in words and numbers of three figures. */
final class Told {

    private static final MathContext THREE_FIGURES = new MathContext(3, RoundingMode.HALF_UP);
    private static final double ALL_DIGITS = 100;

    private Told() {}

    /** A number with three figures; whole from 100 up. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            return "none";
        }
        if (Math.abs(value) >= ALL_DIGITS) {
            return Long.toString(Math.round(value));
        }
        BigDecimal rounded = new BigDecimal(value).round(THREE_FIGURES);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The course of a line: its lowest and highest points, and its end. */
    static String course(String label, double[] x, double[] y, DoubleFunction<String> place) {
        String range = range(label, x, y, place);
        for (int last = y.length - 1; last >= 0; last--) {
            if (Double.isFinite(y[last])) {
                return range.endsWith(" throughout") ? range : range + ", at the end " + number(y[last]);
            }
        }
        return range;
    }

    /**
     * Lowest and highest of some values.
     *
     * @param place names a place along
     */
    static String range(String label, double[] x, double[] y, DoubleFunction<String> place) {
        int least = -1;
        int most = -1;
        for (int i = 0; i < y.length; i++) {
            if (Double.isFinite(y[i])) {
                least = least < 0 || y[i] < y[least] ? i : least;
                most = most < 0 || y[i] > y[most] ? i : most;
            }
        }
        if (least < 0) {
            return label + ": no value";
        }
        if (number(y[least]).equals(number(y[most]))) {
            return label + ": " + number(y[least]) + " throughout";
        }
        return label + ": lowest " + number(y[least]) + " " + place.apply(x[least]) + ", highest " + number(y[most])
                + " " + place.apply(x[most]);
    }
}
