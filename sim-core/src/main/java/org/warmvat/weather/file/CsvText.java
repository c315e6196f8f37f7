package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.Iterator;
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

    /** Says what a spreadsheet of many countries has done, where a line of names should be cut at commas and is not. */
    public static void refuseSemicolons(CsvRecord names, FileFaults faults) throws WeatherRefused {
        if (names.getFieldCount() == 1 && names.getField(0).indexOf(';') >= 0) {
            throw faults.refusedAt(
                    names.getStartingLineNumber(),
                    "semicolons between the names, expected commas, and points in the numbers (as a spreadsheet saves it under"
                            + " English settings)");
        }
    }

    /** Whether a record is a row that a spreadsheet has left over: delimiters and nothing between them. */
    static boolean isBlank(CsvRecord row) {
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
