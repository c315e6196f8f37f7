package org.warmvat.weather.layout;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;

/** The cells of a single line of the head of a file, in which a delimiter between quotation marks is none. */
public final class LineCells {
    private LineCells() {}

    /**
     * Cuts a line.
     *
     * @param line without its end
     * @param delimiter between cells
     * @return the cells without the blanks about them; of a line whose quotation marks do not match, as if it had none
     */
    public static List<String> of(String line, char delimiter) {
        try {
            Iterator<CsvRecord> records = CsvReader.builder()
                    .fieldSeparator(delimiter)
                    .ofCsvRecord(line)
                    .iterator();
            return records.hasNext()
                    ? records.next().getFields().stream().map(String::strip).toList()
                    : List.of("");
        } catch (CsvParseException e) {
            return Pattern.compile(String.valueOf(delimiter), Pattern.LITERAL)
                    .splitAsStream(line.replace("\"", ""))
                    .map(String::strip)
                    .toList();
        }
    }
}
