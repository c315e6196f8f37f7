package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.Iterator;
import java.util.List;
import org.warmvat.weather.WeatherRefused;

/** The records of delimited text after some lead-in lines, with the file's own line numbers; broken quotes are refused. */
public final class CsvText {
    private final FileFaults faults;
    private final Iterator<CsvRecord> records;
    private long lastLine;

    /**
     * Records of a text.
     *
     * @param text all of it
     * @param skipLines lead-in lines before the first record
     * @param delimiter between cells
     * @param faults where broken quotes are told
     */
    public CsvText(String text, int skipLines, char delimiter, FileFaults faults) throws WeatherRefused {
        this.faults = faults;
        this.lastLine = skipLines;
        CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(delimiter)
                .skipEmptyLines(true)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text);
        reader.skipLines(skipLines);
        this.records = reader.iterator();
    }

    /**
     * Says what a spreadsheet of many countries has done, where a line of names should be cut at commas and is not; before anything else,
     * since it has done the same to the numbers above that line.
     *
     * @param text of a file of ours, whose names follow lines that begin with a hash
     */
    public static void refuseSemicolons(String text, FileFaults faults) throws WeatherRefused {
        List<String> lead = text.lines()
                .takeWhile(line -> line.startsWith("#") || line.isBlank())
                .toList();
        String names = text.lines().skip(lead.size()).findFirst().orElse("");
        if (names.indexOf(';') >= 0 && names.indexOf(',') < 0) {
            throw faults.refusedAt(
                    lead.size() + 1L,
                    "semicolons between the names, expected commas, and points in the numbers (as a spreadsheet saves it under"
                            + " English settings)");
        }
    }

    /** The line of column names, which comes first. */
    public CsvRecord heading() throws WeatherRefused {
        if (!hasNext()) {
            throw faults.refusedAt(lastLine + 1, "the file ends, expected a line of column names");
        }
        return next();
    }

    /** The names in such a line. */
    public static List<String> names(CsvRecord heading) {
        return heading.getFields().stream().map(String::strip).toList();
    }

    /** Whether a record is a row that a spreadsheet has left over: delimiters and nothing between them. */
    public static boolean isBlank(CsvRecord row) {
        return row.getField(0).isBlank() && row.getFields().stream().allMatch(String::isBlank);
    }

    /** Whether another record follows. */
    public boolean hasNext() throws WeatherRefused {
        try {
            return records.hasNext();
        } catch (CsvParseException e) {
            throw broken();
        }
    }

    /** The next record. */
    public CsvRecord next() throws WeatherRefused {
        try {
            CsvRecord record = records.next();
            lastLine = record.getStartingLineNumber();
            return record;
        } catch (CsvParseException e) {
            throw broken();
        }
    }

    private WeatherRefused broken() {
        return faults.refusedAt(lastLine + 1, "quotation marks do not match from here on");
    }
}
