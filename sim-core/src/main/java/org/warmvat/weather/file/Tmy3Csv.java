package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;

/**
 * Reads the open layout of typical years described by S. Wilcox and W. Marion (2008), "Users manual for TMY3 data sets",
 * NREL/TP-581-43156: stamps at the end of the hour in local standard time, radiation of the hour before the label, other
 * values at the label, -9900 for a missing value.
 */
final class Tmy3Csv {
    private static final String DATE = "Date (MM/DD/YYYY)";
    private static final String TIME = "Time (HH:MM)";
    private static final double MISSING = -9900;
    private static final Map<String, Quantity> COLUMNS = Map.ofEntries(
            Map.entry("GHI (W/m^2)", Quantity.GLOBAL),
            Map.entry("DNI (W/m^2)", Quantity.BEAM),
            Map.entry("DHI (W/m^2)", Quantity.DIFFUSE),
            Map.entry("TotCld (tenths)", Quantity.CLOUD),
            Map.entry("Dry-bulb (C)", Quantity.AIR),
            Map.entry("Dew-point (C)", Quantity.DEW_POINT),
            Map.entry("RHum (%)", Quantity.RELATIVE_HUMIDITY),
            Map.entry("Pressure (mbar)", Quantity.PRESSURE),
            Map.entry("Wspd (m/s)", Quantity.WIND));
    private static final Map<Quantity, Double> DIVISORS =
            new EnumMap<>(Map.of(Quantity.CLOUD, 10.0, Quantity.RELATIVE_HUMIDITY, 100.0));

    private final String text;
    private final FileFaults faults;
    private final List<String> notes = new ArrayList<>();

    Tmy3Csv(String text, FileFaults faults) {
        this.text = text;
        this.faults = faults;
    }

    /** Whether a text looks like this layout: the second line begins with the names of its first columns. */
    static boolean isLike(String text) {
        int second = text.indexOf('\n') + 1;
        return second > 0 && text.startsWith(DATE, second);
    }

    HourlyTable read() throws WeatherRefused {
        CsvText csv = new CsvText(text, 0, ',', faults);
        Site site = site(csv.next());
        faults.refuseIfAny();
        CsvRecord names = csv.next();
        RawRows rows = rows(csv, names);
        faults.refuseIfAny();
        Calendar.Placed placed = new Calendar(rows, Stamp.HOUR_END, faults).place(true, notes);
        GapFilling filling = new GapFilling(rows, placed, site, faults, notes);
        return filling.table(Stamp.HOUR_END);
    }

    private Site site(CsvRecord first) throws WeatherRefused {
        if (first.getFieldCount() < 7) {
            throw faults.refusedAt(
                    1,
                    first.getFieldCount() + " cells, expected 7: station, name, state, UTC offset, latitude, longitude,"
                            + " elevation");
        }
        double offset = number(first, 3, "UTC offset", -12, 14);
        double latitude = number(first, 4, "latitude", -90, 90);
        double longitude = number(first, 5, "longitude", -180, 180);
        double elevation = number(first, 6, "elevation", -450, 6000);
        String name = first.getField(1).strip() + " " + first.getField(2).strip();
        return new Site(name.strip(), latitude, longitude, elevation, offset);
    }

    private double number(CsvRecord record, int cell, String what, int least, int most) throws WeatherRefused {
        String found = record.getField(cell).strip();
        double value = Decimal.isNumber(found) ? Double.parseDouble(found) : Double.NaN;
        if (!(value >= least && value <= most)) {
            faults.add(1, what + " \"" + found + "\", expected a number from " + least + " to " + most);
            return 0;
        }
        return value;
    }

    private RawRows rows(CsvText csv, CsvRecord names) throws WeatherRefused {
        List<String> headings = names.getFields().stream().map(String::strip).toList();
        Map<Quantity, Integer> columns = new EnumMap<>(Quantity.class);
        COLUMNS.forEach((heading, quantity) -> {
            if (headings.contains(heading)) {
                columns.put(quantity, headings.indexOf(heading));
            }
        });
        for (String needed : List.of(DATE, TIME, "Dry-bulb (C)", "GHI (W/m^2)")) {
            if (!headings.contains(needed)) {
                faults.add(2, "no column \"" + needed + "\", which is required");
            }
        }
        faults.refuseIfAny();
        RawRows rows = new RawRows(columns.keySet());
        int timeColumn = headings.indexOf(TIME);
        while (csv.hasNext()) {
            CsvRecord row = csv.next();
            int line = (int) row.getStartingLineNumber();
            if (row.getFieldCount() != headings.size()) {
                faults.add(line, row.getFieldCount() + " cells, expected " + headings.size() + " as in line 2");
                continue;
            }
            OptionalLong time =
                    time(line, row.getField(0).strip(), row.getField(timeColumn).strip());
            if (time.isPresent()) {
                rows.begin(line, time.getAsLong());
                take(rows, line, row, columns);
            }
        }
        return rows;
    }

    private void take(RawRows rows, int line, CsvRecord row, Map<Quantity, Integer> columns) throws WeatherRefused {
        CellReader cells = new CellReader(faults);
        for (Map.Entry<Quantity, Integer> column : columns.entrySet()) {
            Quantity quantity = column.getKey();
            String cell = row.getField(column.getValue()).strip();
            if (cell.isEmpty()
                    || (cell.startsWith("-99") && Decimal.isNumber(cell) && Double.parseDouble(cell) == MISSING)) {
                continue;
            }
            double divisor = DIVISORS.getOrDefault(quantity, 1.0);
            if (divisor == 1) {
                rows.set(quantity, cells.value(line, quantity, cell));
            } else if (Decimal.isNumber(cell)) {
                rows.set(quantity, cells.limited(line, quantity, Double.parseDouble(cell) / divisor, cell));
            } else {
                faults.add(line, quantity.key() + " \"" + cell + "\", expected a number");
            }
        }
    }

    private OptionalLong time(int line, String date, String time) throws WeatherRefused {
        OptionalLong minutes = OptionalLong.empty();
        if (date.length() == 10 && time.length() == 5 && date.charAt(2) == '/' && time.charAt(2) == ':') {
            minutes = RowTime.minutes(
                    RowTime.number(date, 6, 10),
                    RowTime.number(date, 0, 2),
                    RowTime.number(date, 3, 5),
                    RowTime.number(time, 0, 2),
                    RowTime.number(time, 3, 5));
        }
        if (minutes.isEmpty()) {
            faults.add(line, "date and time \"" + date + "," + time + "\", expected like 01/31/1988,14:00");
        }
        return minutes;
    }
}
