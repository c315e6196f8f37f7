package org.warmvat.cli.answer;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/** Hourly columns with their time, which is the end of the hour; shorter columns end in empty cells. */
final class CourseCsv {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ROOT);

    private record Column(String name, double[] values, int decimals) {}

    private final List<Column> columns = new ArrayList<>();

    CourseCsv temperature(String name, double[] values) {
        columns.add(new Column(name, values, 4));
        return this;
    }

    CourseCsv power(String name, double[] values) {
        columns.add(new Column(name, values, 3));
        return this;
    }

    /** With the time of each row. */
    byte[] from(LocalDateTime start) {
        return bytes("time", hour -> TIME.format(start.plusHours(hour + 1L)));
    }

    /** With the hours since the beginning at the end of each row. */
    byte[] counted() {
        return bytes("hours", hour -> Integer.toString(hour + 1));
    }

    private byte[] bytes(String first, IntFunction<String> label) {
        StringBuilder text = new StringBuilder(first);
        columns.forEach(column -> text.append(',').append(column.name()));
        text.append('\n');
        int rows = columns.stream()
                .mapToInt(column -> column.values().length)
                .max()
                .orElse(0);
        for (int row = 0; row < rows; row++) {
            text.append(label.apply(row));
            for (Column column : columns) {
                text.append(',');
                if (row < column.values().length) {
                    Decimals.append(text, column.values()[row], column.decimals());
                }
            }
            text.append('\n');
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
