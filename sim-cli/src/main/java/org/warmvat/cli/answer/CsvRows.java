package org.warmvat.cli.answer;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Rows of figures as CSV, the keys of the first row being the headings. No text of the user stands in them. */
final class CsvRows {

    private CsvRows() {}

    static byte[] of(List<Map<String, Object>> rows) {
        StringWriter text = new StringWriter();
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text);
        csv.writeRecord(new ArrayList<>(rows.get(0).keySet()));
        rows.forEach(
                row -> csv.writeRecord(row.values().stream().map(CsvRows::cell).toList()));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            boolean whole = number == Math.rint(number) && Math.abs(number) < 1e9;
            return whole ? Long.toString(number.longValue()) : number.toString();
        }
        return value.toString();
    }
}
