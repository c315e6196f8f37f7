package org.warmvat.design;

import java.util.List;
import java.util.Locale;
import org.warmvat.physics.Require;

/** Checks of design numbers beside those of {@link Require}: open ranges, names, lists. */
final class Ranges {

    private Ranges() {}

    /** Refuses a value outside {@code least..most}, both ends allowed; NaN is refused too. */
    static void within(String what, double value, double least, double most) {
        Require.within(what, value, least, most);
    }

    /** Refuses a value that is not above {@code bound} or that is above {@code most}. */
    static void above(String what, double value, double bound, double most) {
        if (!(value > bound && value <= most)) {
            throw new IllegalArgumentException(
                    what + " " + text(value) + ", expected above " + text(bound) + " and up to " + text(most));
        }
    }

    static void stated(String what, boolean holds, String expectation) {
        if (!holds) {
            throw new IllegalArgumentException(what + ", expected " + expectation);
        }
    }

    static void named(String what, String name) {
        stated(what + " is blank", !name.isBlank(), "a name");
    }

    static <T> List<T> someOf(String what, List<T> list) {
        stated(what + " has no entry", !list.isEmpty(), "at least one");
        return List.copyOf(list);
    }

    /** The shortest plain text of a number: no exponent between 1e-4 and 1e9, no trailing ".0". */
    static String text(double value) {
        double size = Math.abs(value);
        if (value == Math.rint(value) && size < 1e9) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        return Double.toString(value);
    }
}
