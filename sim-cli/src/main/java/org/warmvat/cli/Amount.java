package org.warmvat.cli;

import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Checks numbers of options. */
final class Amount {

    private Amount() {}

    /** The value, within limits. */
    static double within(CommandLine line, String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new ParameterException(
                    line, option + " " + plain(value) + ", expected " + plain(least) + " to " + plain(most));
        }
        return value;
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
