package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.warmvat.spelling.Nearest;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;

/** Reads the rows of a text by its {@link Layout}, with the times of the text's own clock. */
final class LayoutRows {
    private final Layout layout;
    private final FileFaults faults;
    private final CellReader cells;
    private final Map<Quantity, Missing> missing = new EnumMap<>(Quantity.class);
    private List<String> names = List.of();
    /** Rows at the beginning whose times do not read. */
    private int unread;

    private List<Cell> timeCells = List.of();
    private final Map<Quantity, List<Cell>> columns = new EnumMap<>(Quantity.class);

    LayoutRows(Layout layout, FileFaults faults) {
        this.layout = layout;
        this.faults = faults;
        this.cells = new CellReader(faults);
        layout.columns().forEach((quantity, column) -> {
            Set<String> codes = new HashSet<>(layout.missing());
            codes.addAll(column.missing());
            missing.put(quantity, Missing.of(codes));
        });
    }

    /** Codes of no value: as texts, and those that are numbers as numbers. */
    private record Missing(Set<String> texts, double[] numbers) {
        static Missing of(Set<String> codes) {
            return new Missing(
                    codes,
                    codes.stream()
                            .filter(Decimal::isNumber)
                            .mapToDouble(Double::parseDouble)
                            .toArray());
        }

        boolean has(String cell) {
            return cell.isEmpty() || texts.contains(cell);
        }

        boolean has(double value) {
            for (double number : numbers) {
                if (number == value) {
                    return true;
                }
            }
            return false;
        }
    }

    /** A cell of a row: a whole field, or a part of the line. */
    private record Cell(int field, int from, int to) {
        static Cell field(int index) {
            return new Cell(index, 0, Integer.MAX_VALUE);
        }

        String of(CsvRecord row) {
            String text = row.getField(field);
            return from == 0 && to >= text.length()
                    ? text.strip()
                    : text.substring(Math.min(from, text.length()), Math.min(to, text.length()))
                            .strip();
        }
    }

    RawRows read(String text) throws WeatherRefused {
        CsvText csv = new CsvText(
                layout.text().rowsOf(text),
                layout.text().skipLines(),
                layout.text().delimiter(),
                faults);
        if (layout.text().headings()) {
            names = CsvText.names(csv.heading());
        }
        timeCells = found(layout.time().columns());
        for (Map.Entry<Quantity, Layout.Column> column : layout.columns().entrySet()) {
            columns.put(column.getKey(), found(column.getValue().places()));
        }
        faults.refuseIfAny();
        RawRows rows = rows(csv);
        faults.refuseIfAny();
        return rows;
    }

    private List<Cell> found(List<Layout.Place> places) throws WeatherRefused {
        List<Cell> found = new ArrayList<>();
        for (Layout.Place place : places) {
            found.add(cell(place));
        }
        return found;
    }

    private Cell cell(Layout.Place place) throws WeatherRefused {
        if (place instanceof Layout.ByNumber number) {
            return Cell.field(number.column() - 1);
        }
        if (place instanceof Layout.ByPosition position) {
            return new Cell(0, position.from() - 1, position.to());
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
        return Cell.field(Math.max(0, index));
    }

    private RawRows rows(CsvText csv) throws WeatherRefused {
        int needed = 0;
        for (Cell cell : timeCells) {
            needed = Math.max(needed, cell.field());
        }
        for (List<Cell> column : columns.values()) {
            needed =
                    Math.max(needed, column.stream().mapToInt(Cell::field).max().orElse(0));
        }
        RawRows rows = new RawRows(columns.keySet());
        while (csv.hasNext()) {
            CsvRecord row = csv.next();
            int line = (int) row.getStartingLineNumber();
            if (CsvText.isBlank(row)) {
                continue;
            }
            if (row.getFieldCount() <= needed) {
                faults.add(line, row.getFieldCount() + " cells, expected at least " + (needed + 1));
                continue;
            }
            OptionalLong time = time(line, row, rows.size() == 0);
            if (time.isPresent()) {
                rows.begin(line, time.getAsLong());
                for (Map.Entry<Quantity, List<Cell>> column : columns.entrySet()) {
                    rows.set(column.getKey(), value(line, column.getKey(), column.getValue(), row));
                }
            }
        }
        return rows;
    }

    private OptionalLong time(int line, CsvRecord row, boolean first) throws WeatherRefused {
        String text = timeCells.get(0).of(row);
        for (int i = 1; i < timeCells.size(); i++) {
            text = text + " " + timeCells.get(i).of(row);
        }
        OptionalLong time = layout.time().form().minutes(text);
        if (time.isEmpty() && first && ++unread > 1) {
            // the same would be said of every row
            throw faults.refusedAt(
                    line,
                    "time " + FileFaults.quoted(text) + ", expected the form "
                            + layout.time().form()
                            + ", which no row has so far; a layout says another, \"warmvat weather layout FILE\" proposes one");
        }
        if (time.isEmpty()) {
            faults.add(
                    line,
                    "time " + FileFaults.quoted(text) + ", expected the form "
                            + layout.time().form());
        }
        return time;
    }

    /** The sum of a quantity's cells in its own unit, NaN where one is missing or refused. */
    private double value(int line, Quantity quantity, List<Cell> places, CsvRecord row) throws WeatherRefused {
        double sum = 0;
        String shown = "";
        for (Cell place : places) {
            String cell = place.of(row);
            shown = shown.isEmpty() ? cell : shown + " + " + cell;
            sum += number(line, quantity, cell);
        }
        if (Double.isNaN(sum)) {
            return sum;
        }
        Layout.Column column = layout.columns().get(quantity);
        double parts = 1 / column.factor();
        // tenths and hundredths are divided by, which is exact where a product is not
        double scaled = parts == Math.rint(parts) ? sum / parts : sum * column.factor();
        double converted = scaled + column.offset();
        return cells.limited(line, quantity, settled(quantity, converted), shown);
    }

    private double number(int line, Quantity quantity, String cell) throws WeatherRefused {
        if (missing.get(quantity).has(cell)) {
            return Double.NaN;
        }
        boolean comma = layout.text().decimalMark() == ',';
        String plain = comma ? cell.replace(',', '.') : cell;
        if (!Decimal.isNumber(plain) || (comma && cell.indexOf('.') >= 0)) {
            faults.add(
                    line,
                    quantity.key() + " " + FileFaults.quoted(cell) + ", expected a number with a decimal "
                            + (comma ? "comma" : "point") + ", nothing or a missing-value code");
            return Double.NaN;
        }
        double value = Decimal.value(plain);
        return missing.get(quantity).has(value) ? Double.NaN : value;
    }

    /** A conversion may miss a limit by the last bit: 100 percent are 1, not a hair more. */
    private static double settled(Quantity quantity, double value) {
        double hair = 1e-9 * Math.max(1, Math.abs(value));
        boolean above = value > quantity.most() && value < quantity.most() + hair;
        boolean below = value < quantity.least() && value > quantity.least() - hair;
        return above ? quantity.most() : below ? quantity.least() : value;
    }
}
