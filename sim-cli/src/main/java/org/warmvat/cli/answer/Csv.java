package org.warmvat.cli.answer;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * A table for other programs, UTF-8 with commas and a heading: numbers to six significant digits, what is absent left empty. No text
 * of the user stands in it, so that no cell can be taken for a formula.
 */
public final class Csv {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ROOT);

    private final ByteArrayOutputStream text = new ByteArrayOutputStream();
    private final CsvWriter csv = CsvWriter.builder()
            .lineDelimiter(LineDelimiter.LF)
            .build(new OutputStreamWriter(text, StandardCharsets.UTF_8));

    /** A table without headings: the later part of one in several files. */
    public static Csv headless() {
        return new Csv();
    }

    /** A table with these headings and no rows yet. */
    public static Csv of(List<String> headings) {
        Csv table = new Csv();
        table.csv.writeRecord(headings);
        return table;
    }

    /** Rows of figures, the keys of the first being the headings. */
    public static Csv ofRows(Collection<? extends Map<String, ?>> rows) {
        Csv table = of(List.copyOf(rows.iterator().next().keySet()));
        rows.forEach(row -> table.row(row.values().toArray()));
        return table;
    }

    /** Figures hour by hour, each row with the time of its end; a shorter column ends in empty cells. */
    public static Csv hourly(LocalDateTime start, Map<String, double[]> columns) {
        return columns("time", hour -> TIME.format(start.plusHours(hour + 1L)), columns);
    }

    /** Figures hour by hour, each row with the hours since the beginning at its end. */
    public static Csv counted(Map<String, double[]> columns) {
        return columns("hours", hour -> Integer.toString(hour + 1), columns);
    }

    private static Csv columns(String first, IntFunction<String> label, Map<String, double[]> columns) {
        List<String> headings = new ArrayList<>(List.of(first));
        headings.addAll(columns.keySet());
        Csv table = of(headings);
        int rows = columns.values().stream()
                .mapToInt(values -> values.length)
                .max()
                .orElse(0);
        for (int row = 0; row < rows; row++) {
            List<String> cells = new ArrayList<>(List.of(label.apply(row)));
            for (double[] values : columns.values()) {
                cells.add(row < values.length ? Numerals.six(values[row]) : "");
            }
            table.csv.writeRecord(cells);
        }
        return table;
    }

    /** Adds a row: numbers, text, or null for what is not there. */
    public Csv row(Object... cells) {
        csv.writeRecord(Arrays.stream(cells).map(Csv::cell).toList());
        return this;
    }

    /** Adds a row of numbers; those that are not finite are left empty. */
    public Csv numbers(double... numbers) {
        csv.writeRecord(Arrays.stream(numbers).mapToObj(Numerals::six).toList());
        return this;
    }

    private static String cell(Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Number number ? Numerals.six(number.doubleValue()) : value.toString();
    }

    /** All of it. */
    public byte[] bytes() {
        try {
            csv.flush();
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return text.toByteArray();
    }
}
