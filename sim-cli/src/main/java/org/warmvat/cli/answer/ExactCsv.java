package org.warmvat.cli.answer;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes rows of numbers as CSV with all their digits; what is absent (not a number, infinite) is left empty. Headings are names
 * of keys, so that no cell can be taken for a formula.
 */
public final class ExactCsv {

    private final ByteArrayOutputStream text = new ByteArrayOutputStream();
    private final CsvWriter csv = CsvWriter.builder()
            .lineDelimiter(LineDelimiter.LF)
            .build(new OutputStreamWriter(text, StandardCharsets.UTF_8));

    /** Adds the headings. */
    public void header(List<String> names) {
        csv.writeRecord(names);
    }

    /** Adds a row. */
    public void row(double... values) {
        List<String> cells = new ArrayList<>(values.length);
        for (double value : values) {
            cells.add(Double.isFinite(value) ? exact(value) : "");
        }
        csv.writeRecord(cells);
    }

    /** All of it, UTF-8. */
    public byte[] bytes() {
        try {
            csv.flush();
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return text.toByteArray();
    }

    private static String exact(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
