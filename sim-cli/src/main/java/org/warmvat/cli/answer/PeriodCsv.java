package org.warmvat.cli.answer;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.result.Marks;
import org.warmvat.result.Period;

/**
 * Writes {@code daily.csv} and {@code monthly.csv}: the figures of {@code summary.json} by column, those of a circuit that is
 * not there left empty. No text of the user stands in them, so that no cell can be taken for a formula.
 */
final class PeriodCsv {

    private PeriodCsv() {}

    static byte[] of(String labelColumn, List<Period> periods, Marks marks) {
        StringWriter text = new StringWriter(periods.size() * 1024);
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            List<String> header = new ArrayList<>(List.of(labelColumn));
            Figures.ALL.forEach(figure -> header.add(figure.column()));
            csv.writeRecord(header);
            for (Period period : periods) {
                csv.writeRecord(row(period, marks));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> row(Period period, Marks marks) {
        List<String> row = new ArrayList<>(List.of(period.label()));
        for (Figure figure : Figures.ALL) {
            OptionalDouble value = figure.circuit().met(marks) ? figure.value().apply(period) : OptionalDouble.empty();
            row.add(value.isEmpty() || Double.isInfinite(value.getAsDouble()) ? "" : exact(value.getAsDouble()));
        }
        return row;
    }

    private static String exact(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
