package org.warmvat.weather.file;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.warmvat.spelling.Nearest;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.made.MonthNormals;
import org.warmvat.weather.made.Normals;

/** Reads a file of monthly normals: lines of {@code # key: value}, a line of column names, twelve rows. */
public final class NormalsFile {
    private static final String MARK = "# warmvat normals";
    private static final List<String> KEYS =
            List.of("site", "latitude_deg", "longitude_deg", "elevation_m", "utc_offset_h", "seed", "origin", "note");
    /** The highest seed of a file of normals; the lowest is 0. */
    public static final int MOST_SEED = 1_000_000_000;

    private static final String MONTH = "month";
    private static final String AIR = "air_c";
    private static final String RANGE = "daily_range_k";
    private static final String GLOBAL = "global_kwh_m2_day";
    private static final String GLOBAL_MONTH = "global_kwh_m2_month";
    private static final String WIND = "wind_m_s";
    private static final String SPREAD = "month_sd_k";
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final Map<String, double[]> LIMITS = Map.of(
            MONTH,
            new double[] {1, 12},
            AIR,
            new double[] {-60, 45},
            RANGE,
            new double[] {1, 30},
            GLOBAL,
            new double[] {0, 12},
            Quantity.RELATIVE_HUMIDITY.key(),
            new double[] {0.05, 1},
            Quantity.DEW_POINT.key(),
            new double[] {-70, 35},
            WIND,
            new double[] {0, 25},
            GLOBAL_MONTH,
            new double[] {0, 372},
            SPREAD,
            new double[] {0, 10});

    private final FileFaults faults;

    private NormalsFile(FileFaults faults) {
        this.faults = faults;
    }

    /**
     * Reads a file.
     *
     * @throws WeatherRefused when it cannot be used, with every fault found
     * @throws IOException when it cannot be opened
     */
    public static Normals read(Path path) throws WeatherRefused, IOException {
        return parse(path.getFileName().toString(), TextFile.read(path));
    }

    /**
     * Reads the text of a file.
     *
     * @param file its name for messages
     * @param text all of it
     */
    public static Normals parse(String file, String text) throws WeatherRefused {
        return new NormalsFile(new FileFaults(file)).parse(text);
    }

    private Normals parse(String text) throws WeatherRefused {
        if (!text.startsWith(MARK)) {
            throw faults.refusedAt(
                    1,
                    "expected \"" + MARK + " 1\", lines \"# latitude_deg: ...\" and so on, the names month," + AIR + ','
                            + RANGE + ','
                            + GLOBAL + " (or " + GLOBAL_MONTH + " for a month's sum),"
                            + Quantity.RELATIVE_HUMIDITY.key() + ',' + WIND
                            + " and twelve rows, with commas between and decimal points: \"weather make\" makes years of monthly means");
        }
        CsvText.refuseSemicolons(text, faults);
        LeadIn lead = LeadIn.read(text, MARK, KEYS, faults);
        Site site = lead.site();
        double seed = lead.number("seed", 0, MOST_SEED);
        if (seed != Math.rint(seed)) {
            faults.add("seed, expected a whole number from 0 to " + MOST_SEED);
        }
        CsvText csv = new CsvText(text, lead.lines(), ',', faults);
        CsvRecord heading = csv.heading();
        List<String> names = CsvText.names(heading);
        Quantity humidity = humidity(heading.getStartingLineNumber(), names);
        faults.refuseIfAny();
        List<MonthNormals> months = new ArrayList<>();
        while (csv.hasNext()) {
            month(csv.next(), names, humidity, months);
        }
        if (months.size() != 12) {
            faults.add(months.size() + " months, expected 12");
        }
        faults.refuseIfAny();
        return new Normals(site, (long) seed, humidity, months);
    }

    private Quantity humidity(long line, List<String> names) throws WeatherRefused {
        List<String> known = LIMITS.keySet().stream().sorted().toList();
        for (String name : names) {
            if (!known.contains(name)) {
                faults.add(
                        line,
                        "unknown column " + FileFaults.quoted(name) + ", expected one of "
                                + Nearest.listAnd(name, known));
            } else if (names.indexOf(name) != names.lastIndexOf(name)) {
                faults.add(line, "column \"" + name + "\" stands twice");
            }
        }
        for (String needed : List.of(MONTH, AIR, RANGE, WIND)) {
            if (!names.contains(needed)) {
                faults.add(line, "no column " + needed + ", which is required");
            }
        }
        if (names.contains(GLOBAL) == names.contains(GLOBAL_MONTH)) {
            faults.add(
                    line,
                    "expected one of the columns " + GLOBAL + " (a day's mean) and " + GLOBAL_MONTH
                            + " (a month's sum)");
        }
        boolean relative = names.contains(Quantity.RELATIVE_HUMIDITY.key());
        if (relative == names.contains(Quantity.DEW_POINT.key())) {
            faults.add(line, "expected one of the columns relative_humidity and dew_point_c");
        }
        return relative ? Quantity.RELATIVE_HUMIDITY : Quantity.DEW_POINT;
    }

    private void month(CsvRecord row, List<String> names, Quantity humidity, List<MonthNormals> months)
            throws WeatherRefused {
        long line = row.getStartingLineNumber();
        if (row.getFieldCount() != names.size()) {
            faults.add(
                    line, row.getFieldCount() + " cells, expected " + names.size() + " as in the line of column names");
            return;
        }
        int expected = months.size() + 1;
        double month = value(row, names, MONTH);
        if (month != expected && expected <= 12) {
            faults.add(line, "month \"" + row.getField(names.indexOf(MONTH)) + "\", expected " + expected);
        }
        months.add(new MonthNormals(
                value(row, names, AIR),
                value(row, names, RANGE),
                names.contains(GLOBAL)
                        ? value(row, names, GLOBAL)
                        : value(row, names, GLOBAL_MONTH) / DAYS[Math.min(11, months.size())],
                value(row, names, humidity.key()),
                value(row, names, WIND),
                names.contains(SPREAD) ? OptionalDouble.of(value(row, names, SPREAD)) : OptionalDouble.empty()));
    }

    private double value(CsvRecord row, List<String> names, String name) throws WeatherRefused {
        String cell = row.getField(names.indexOf(name)).strip();
        double[] limits = LIMITS.get(name);
        double value = Decimal.isNumber(cell) ? Double.parseDouble(cell) : Double.NaN;
        if (!(value >= limits[0] && value <= limits[1])) {
            DecimalFormat plain = new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT));
            faults.add(
                    row.getStartingLineNumber(),
                    name + " " + FileFaults.quoted(cell) + ", expected " + plain.format(limits[0]) + " to "
                            + plain.format(limits[1])
                            + (name.equals(GLOBAL) && value > limits[1] && value <= 372
                                    ? " (a month's sum? name the column " + GLOBAL_MONTH + ")"
                                    : ""));
            return limits[0];
        }
        return value;
    }
}
