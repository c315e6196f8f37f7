package org.warmvat.log;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.weather.file.Decimal;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/**
 * How a delimited text is laid out, so that it can be read as a log.
 *
 * @param text lines, cells and numbers
 * @param time columns whose cells make the time, joined by single spaces
 * @param forms how the time may read; the first that fits counts
 * @param utcOffsetH the logger's clock less universal time, where it is known
 * @param columns where each column stands and in which unit, by our names
 * @param missing cells that mean no value, beside empty ones; numbers are compared as numbers
 */
public record LogLayout(
        Layout.Text text,
        List<Layout.Place> time,
        List<TimeForm> forms,
        OptionalDouble utcOffsetH,
        Map<String, Column> columns,
        Set<String> missing) {

    /**
     * Where a column stands and in which unit; values outside a range are none, as of a sensor with a broken wire.
     *
     * @param at where, and its unit
     * @param from least value that counts, in our unit
     * @param to greatest value that counts
     */
    public record Column(Layout.Column at, double from, double to) {

        /** A column all of whose values count. */
        public static Column of(Layout.Column at) {
            return new Column(at, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
    }

    /** Copies. */
    public LogLayout {
        time = List.copyOf(time);
        forms = List.copyOf(forms);
        columns = Map.copyOf(columns);
        missing = Set.copyOf(missing);
    }

    /** Whether a number means no value. */
    boolean isMissing(double number) {
        return missing.stream().filter(Decimal::isNumber).anyMatch(code -> Double.parseDouble(code) == number);
    }
}
