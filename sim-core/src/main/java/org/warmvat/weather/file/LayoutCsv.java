package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;

/** Reads any delimited hourly text by its {@link Layout}. */
final class LayoutCsv {
    private final String text;
    private final Layout layout;
    private final FileFaults faults;
    private final List<String> notes = new ArrayList<>();
    private final double[] missingNumbers;

    LayoutCsv(String text, Layout layout, FileFaults faults) {
        this.text = text;
        this.layout = layout;
        this.faults = faults;
        this.missingNumbers = layout.missing().stream()
                .filter(Decimal::isNumber)
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    HourlyTable read() throws WeatherRefused {
        Site site = new LayoutSite(text, layout, faults).site();
        CsvText csv = new CsvText(text, layout.text().skipLines(), layout.text().delimiter(), faults);
        List<String> names = List.of();
        if (layout.text().headings()) {
            if (!csv.hasNext()) {
                throw faults.refusedAt(
                        layout.text().skipLines() + 1L, "the file ends, expected a line of column names");
            }
            CsvRecord heading = csv.next();
            names = heading.getFields().stream().map(String::strip).toList();
        }
        int[] timeColumns = new int[layout.time().columns().size()];
        for (int i = 0; i < timeColumns.length; i++) {
            timeColumns[i] = index(layout.time().columns().get(i), names);
        }
        Map<Quantity, Integer> columns = new EnumMap<>(Quantity.class);
        for (Map.Entry<Quantity, Layout.Column> column : layout.columns().entrySet()) {
            columns.put(column.getKey(), index(column.getValue().place(), names));
        }
        faults.refuseIfAny();
        RawRows rows = rows(csv, timeColumns, columns, site);
        faults.refuseIfAny();
        Stamp stamp = layout.time().stamp();
        Calendar.Placed placed =
                new Calendar(rows, stamp, faults).place(layout.time().typical(), notes);
        return new GapFilling(rows, placed, site, faults, notes).table(stamp);
    }

    /** Index of a column, counted from 0. */
    private int index(Layout.Place place, List<String> names) throws WeatherRefused {
        if (place instanceof Layout.ByNumber number) {
            return number.column() - 1;
        }
        String name = ((Layout.ByHeading) place).name();
        int index = names.indexOf(name);
        int line = layout.text().skipLines() + 1;
        if (index < 0) {
            String known = names.isEmpty() ? "a layout with headings: true" : "one of " + Nearest.listAnd(name, names);
            faults.add(line, "no column \"" + name + "\", expected " + known);
        } else if (names.lastIndexOf(name) != index) {
            faults.add(line, "column \"" + name + "\" stands twice: name it by its number");
        }
        return Math.max(0, index);
    }

    private RawRows rows(CsvText csv, int[] timeColumns, Map<Quantity, Integer> columns, Site site)
            throws WeatherRefused {
        int needed = Arrays.stream(timeColumns).max().orElse(0);
        for (int column : columns.values()) {
            needed = Math.max(needed, column);
        }
        int clockMinutes = layout.time().utc() ? (int) Math.round(60 * site.utcOffsetH()) : 0;
        RawRows rows = new RawRows(columns.keySet());
        while (csv.hasNext()) {
            CsvRecord row = csv.next();
            int line = (int) row.getStartingLineNumber();
            if (row.getFieldCount() <= needed) {
                faults.add(line, row.getFieldCount() + " cells, expected at least " + (needed + 1));
                continue;
            }
            OptionalLong time = time(line, row, timeColumns);
            if (time.isPresent()) {
                rows.begin(line, time.getAsLong() + clockMinutes);
                for (Map.Entry<Quantity, Integer> column : columns.entrySet()) {
                    take(
                            rows,
                            line,
                            column.getKey(),
                            row.getField(column.getValue()).strip());
                }
            }
        }
        return rows;
    }

    private OptionalLong time(int line, CsvRecord row, int[] timeColumns) throws WeatherRefused {
        StringBuilder cells = new StringBuilder();
        for (int column : timeColumns) {
            cells.append(cells.length() == 0 ? "" : " ")
                    .append(row.getField(column).strip());
        }
        OptionalLong time = layout.time().form().minutes(cells.toString());
        if (time.isEmpty()) {
            faults.add(
                    line,
                    "time \"" + cells + "\", expected the form " + layout.time().form());
        }
        return time;
    }

    private void take(RawRows rows, int line, Quantity quantity, String cell) throws WeatherRefused {
        if (cell.isEmpty() || layout.missing().contains(cell)) {
            return;
        }
        boolean comma = layout.text().decimalMark() == ',';
        String plain = comma ? cell.replace(',', '.') : cell;
        if (!Decimal.isNumber(plain) || (comma && cell.indexOf('.') >= 0)) {
            faults.add(
                    line,
                    quantity.key() + " \"" + cell + "\", expected a number with a decimal "
                            + (comma ? "comma" : "point") + ", nothing or a missing-value code");
            return;
        }
        double value = Double.parseDouble(plain);
        if (Arrays.stream(missingNumbers).anyMatch(code -> code == value)) {
            return;
        }
        Layout.Column column = layout.columns().get(quantity);
        double converted = value * column.factor() + column.offset();
        rows.set(quantity, new CellReader(faults).limited(line, quantity, settled(quantity, converted), cell));
    }

    /** A conversion may miss a limit by the last bit: 100 percent are 1, not a hair more. */
    private static double settled(Quantity quantity, double value) {
        double hair = 1e-9 * Math.max(1, Math.abs(value));
        boolean above = value > quantity.most() && value < quantity.most() + hair;
        boolean below = value < quantity.least() && value > quantity.least() - hair;
        return above ? quantity.most() : below ? quantity.least() : value;
    }
}
