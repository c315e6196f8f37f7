package org.warmvat.log;

import de.siegmar.fastcsv.reader.CsvRecord;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.Decimal;
import org.warmvat.weather.file.FileFaults;
import org.warmvat.weather.layout.Layout;

/**
 * A column of a log and where it stands in a row.
 *
 * @param name its key
 * @param index which cell of a row it is, from 0
 * @param column how its cells are taken
 */
record PlacedColumn(String name, int index, LogLayout.Column column) {

    private static final double LEAST_SLURRY_C = -20;
    private static final double MOST_SLURRY_C = 110;

    /** The value in a row, in the unit of the key; not a number where there is none, or where it is at fault. */
    double value(CsvRecord record, LogLayout layout, FileFaults faults) throws WeatherRefused {
        String cell = record.getField(index).strip();
        if (cell.isEmpty() || layout.missing().contains(cell)) {
            return Double.NaN;
        }
        boolean comma = layout.text().decimalMark() == ',';
        String plain = comma ? cell.replace(',', '.') : cell;
        if (!Decimal.isNumber(plain) || (comma && cell.indexOf('.') >= 0)) {
            return refused(
                    record, cell, "a number with a decimal " + (comma ? "comma" : "point") + " or nothing", faults);
        }
        double read = Double.parseDouble(plain);
        Layout.Column unit = column.at();
        double value = read * unit.factor() + unit.offset();
        if (layout.isMissing(read) || value < column.from() || value > column.to()) {
            return Double.NaN;
        }
        double least = LogColumn.ofKey(name).map(LogColumn::least).orElse(LEAST_SLURRY_C);
        double most = LogColumn.ofKey(name).map(LogColumn::most).orElse(MOST_SLURRY_C);
        return value < least || value > most
                ? refused(record, cell, Math.round(least) + " to " + Math.round(most), faults)
                : value;
    }

    private double refused(CsvRecord record, String cell, String expected, FileFaults faults) throws WeatherRefused {
        faults.add(record.getStartingLineNumber(), name + " \"" + cell + "\", expected " + expected);
        return Double.NaN;
    }
}
