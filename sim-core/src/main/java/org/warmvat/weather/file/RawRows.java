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

    private RawRows(RawRows other) {
        other.columns.forEach((quantity, values) -> columns.put(quantity, values.clone()));
        stampMinutes = other.stampMinutes.clone();
        lines = other.lines.clone();
        size = other.size;
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

    /** The same rows at later times. */
    RawRows moved(long laterMinutes) {
        RawRows moved = new RawRows(this);
        for (int i = 0; i < size; i++) {
            moved.stampMinutes[i] = stampMinutes[i] + laterMinutes;
        }
        return moved;
    }

    /** The same rows, beginning with another one, after whose last the first ones follow. */
    RawRows rotated(int first) {
        RawRows rotated = new RawRows(this);
        for (int i = 0; i < size; i++) {
            int from = (i + first) % size;
            rotated.stampMinutes[i] = stampMinutes[from];
            rotated.lines[i] = lines[from];
            for (Map.Entry<Quantity, double[]> column : columns.entrySet()) {
                rotated.columns.get(column.getKey())[i] = column.getValue()[from];
            }
        }
        return rotated;
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
