package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.warmvat.spelling.Nearest;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.RowTime;

/** Reads Warmvat's own weather file: lines of {@code # key: value}, a line of column names, a row for each hour. */
final class WarmvatCsv {
    private static final String TIME = "time";

    private final String text;
    private final Reading reading;
    private final FileFaults faults;
    private final List<String> notes = new ArrayList<>();

    WarmvatCsv(String text, Reading reading, FileFaults faults) {
        this.text = text;
        this.reading = reading;
        this.faults = faults;
    }

    HourlyTable read() throws WeatherRefused {
        CsvText.refuseSemicolons(text, faults);
        WarmvatHeader header = WarmvatHeader.read(text, faults);
        CsvText csv = new CsvText(text, header.lines(), ',', faults);
        CsvRecord names = csv.heading();
        List<Optional<Quantity>> columns = columns(names);
        faults.refuseIfAny();
        RawRows rows = rows(csv, names, columns);
        faults.refuseIfAny();
        return Calendar.table(rows, header.stamp(), false, header.site(), reading, faults, notes);
    }

    /** What each column holds; empty for the time. */
    private List<Optional<Quantity>> columns(CsvRecord names) throws WeatherRefused {
        long line = names.getStartingLineNumber();
        List<Optional<Quantity>> columns = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (String name : CsvText.names(names)) {
            if (!seen.add(name)) {
                faults.add(line, "column \"" + name + "\" stands twice");
            }
            Optional<Quantity> quantity = Quantity.ofKey(name);
            if (quantity.isEmpty() && !name.equals(TIME)) {
                faults.add(
                        line,
                        "unknown column " + FileFaults.quoted(name) + ", expected one of "
                                + Nearest.listAnd(name, known()));
            }
            columns.add(quantity);
        }
        requireColumns(line, seen);
        return columns;
    }

    private static List<String> known() {
        return Stream.concat(Stream.of(TIME), Arrays.stream(Quantity.values()).map(Quantity::key))
                .toList();
    }

    private void requireColumns(long line, Set<String> names) throws WeatherRefused {
        for (String needed : List.of(TIME, Quantity.AIR.key())) {
            if (!names.contains(needed)) {
                faults.add(line, "no column " + needed + ", which is required");
            }
        }
        boolean both = names.contains(Quantity.BEAM.key()) && names.contains(Quantity.DIFFUSE.key());
        if (!names.contains(Quantity.GLOBAL.key()) && !both) {
            faults.add(line, "no irradiance, expected global_w_m2 or two of global_w_m2, beam_w_m2 and diffuse_w_m2");
        }
    }

    private RawRows rows(CsvText csv, CsvRecord names, List<Optional<Quantity>> columns) throws WeatherRefused {
        Set<Quantity> present = EnumSet.noneOf(Quantity.class);
        columns.forEach(column -> column.ifPresent(present::add));
        Quantity[] quantities = columns.stream().map(c -> c.orElse(null)).toArray(Quantity[]::new);
        int timeColumn = CsvText.names(names).indexOf(TIME);
        RawRows rows = new RawRows(present);
        CellReader cells = new CellReader(faults);
        int unread = 0;
        while (csv.hasNext()) {
            CsvRecord row = csv.next();
            int line = (int) row.getStartingLineNumber();
            if (CsvText.isBlank(row)) {
                continue;
            }
            if (row.getFieldCount() != quantities.length) {
                faults.add(
                        line,
                        row.getFieldCount() + " cells, expected " + quantities.length
                                + " as in the line of column names");
                continue;
            }
            OptionalLong time = time(line, row.getField(timeColumn).strip());
            if (time.isEmpty()) {
                if (rows.size() == 0 && ++unread > 1) {
                    // the same would be said of every row
                    faults.refuseIfAny();
                }
                continue;
            }
            rows.begin(line, time.getAsLong());
            for (int i = 0; i < quantities.length; i++) {
                if (quantities[i] != null) {
                    rows.set(quantities[i], cells.value(line, quantities[i], row.getField(i)));
                }
            }
        }
        return rows;
    }

    private OptionalLong time(int line, String cell) throws WeatherRefused {
        OptionalLong time = RowTime.isoMinutes(cell);
        if (time.isEmpty()) {
            faults.add(
                    line,
                    String.format(
                            Locale.ROOT,
                            "time %s, expected a date and time like 2025-01-31T14:00 (local standard time)",
                            FileFaults.quoted(cell)));
        }
        return time;
    }
}
