package org.warmvat.cli.answer;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.warmvat.account.Period;
import org.warmvat.network.Line;

/**
 * Writes {@code daily.csv} and {@code monthly.csv}: the figures of {@code summary.json} by column, those of a circuit that is
 * not there left empty. No text of the user stands in them, so that no cell can be taken for a formula.
 */
final class PeriodCsv {

    private PeriodCsv() {}

    static byte[] of(String labelColumn, List<Period> periods) {
        StringWriter text = new StringWriter(periods.size() * 1024);
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            List<String> header = new ArrayList<>(List.of(labelColumn));
            periods.get(0).books().lines().forEach(line -> header.add(line.column()));
            csv.writeRecord(header);
            for (Period period : periods) {
                csv.writeRecord(row(period));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory failed", impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> row(Period period) {
        List<String> row = new ArrayList<>(List.of(period.label()));
        for (Line line : period.books().lines()) {
            double value = period.has(line) ? period.of(line) : Double.NaN;
            row.add(Double.isFinite(value) ? exact(value) : "");
        }
        return row;
    }

    private static String exact(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
