package org.warmvat.cli.answer;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
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
import java.util.stream.Stream;
import org.warmvat.cli.words.Numerals;

/**
 * A table for other programs, UTF-8 with commas and a heading: numbers to six significant digits, what is absent left empty. No text
 * of the user stands in it, so that no cell can be taken for a formula.
 */
public final class Csv {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ROOT);

    private final ByteArrayOutputStream text = new ByteArrayOutputStream();
    private final CsvWriter csv = writer(text);

    private int lateRows;
    private IntFunction<Object[]> lateRow = row -> new Object[0];

    /**
     * A table whose rows are only made when they are written, since there may be very many.
     *
     * @param headings its headings; none for the later part of a table in several files
     * @param rows how many rows
     * @param row cells of a row by its index
     */
    public static Csv late(List<String> headings, int rows, IntFunction<Object[]> row) {
        Csv table = headings.isEmpty() ? new Csv() : of(headings);
        table.lateRows = rows;
        table.lateRow = row;
        return table;
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
        Csv table =
                of(Stream.concat(Stream.of(first), columns.keySet().stream()).toList());
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

    private static CsvWriter writer(OutputStream out) {
        return CsvWriter.builder()
                .lineDelimiter(LineDelimiter.LF)
                .build(new OutputStreamWriter(out, StandardCharsets.UTF_8));
    }

    private static String cell(Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Number number ? Numerals.six(number.doubleValue()) : value.toString();
    }

    /** All of it. */
    public byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            to(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return bytes.toByteArray();
    }

    /** Writes all of it; the stream stays open. */
    public void to(OutputStream out) throws IOException {
        csv.flush();
        text.writeTo(out);
        CsvWriter late = writer(out);
        for (int row = 0; row < lateRows; row++) {
            late.writeRecord(Arrays.stream(lateRow.apply(row)).map(Csv::cell).toList());
        }
        late.flush();
    }
}
