package org.warmvat.weather.file;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.warmvat.weather.Quantity;

/** The rows of a file as read: times, line numbers and values, with NaN for a missing value inside this package only. */
final class RawRows {
    private final Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
    private long[] stampMinutes = new long[9000];
    private int[] lines = new int[9000];
    private int size;

    /** Quantities that the file has a column for. */
    RawRows(Iterable<Quantity> quantities) {
        for (Quantity quantity : quantities) {
            columns.put(quantity, new double[9000]);
        }
    }

    /** Begins a row in which everything is missing so far. */
    void begin(int line, long stampMinute) {
        if (size == lines.length) {
            stampMinutes = Arrays.copyOf(stampMinutes, 2 * size);
            lines = Arrays.copyOf(lines, 2 * size);
            columns.replaceAll((quantity, values) -> Arrays.copyOf(values, 2 * size));
        }
        lines[size] = line;
        stampMinutes[size] = stampMinute;
        for (double[] values : columns.values()) {
            values[size] = Double.NaN;
        }
        size++;
    }

    /** Sets a value of the row begun last. */
    void set(Quantity quantity, double value) {
        columns.get(quantity)[size - 1] = value;
    }

    int size() {
        return size;
    }

    int line(int row) {
        return lines[row];
    }

    long stampMinute(int row) {
        return stampMinutes[row];
    }

    Iterable<Quantity> quantities() {
        return columns.keySet();
    }

    double value(Quantity quantity, int row) {
        return columns.get(quantity)[row];
    }
}
