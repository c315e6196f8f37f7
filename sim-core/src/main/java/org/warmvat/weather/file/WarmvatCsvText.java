package org.warmvat.weather.file;

import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;

/** Writes hours as a Warmvat weather file. */
public final class WarmvatCsvText {
    private WarmvatCsvText() {}

    /**
     * The text of the file, with a note on each thing that was filled or changed.
     *
     * @param table the hours
     * @param origin one line on where they come from
     */
    public static String of(HourlyTable table, String origin) {
        StringBuilder text = new StringBuilder(table.hours() * 48);
        Site site = table.site();
        text.append("# warmvat weather 1\n");
        line(text, "site", oneLine(site.name()));
        line(text, "latitude_deg", plain(site.latitudeDeg()));
        line(text, "longitude_deg", plain(site.longitudeDeg()));
        line(text, "elevation_m", plain(site.elevationM()));
        line(text, "utc_offset_h", plain(site.utcOffsetH()));
        line(text, "stamp", table.stamp().key());
        line(text, "origin", oneLine(origin));
        table.notes().forEach(note -> line(text, "note", oneLine(note)));
        text.append("time");
        table.columns().keySet().forEach(quantity -> text.append(',').append(quantity.key()));
        text.append('\n');
        LocalDateTime first = table.start().plusMinutes(table.stamp().minutesIntoHour());
        for (int hour = 0; hour < table.hours(); hour++) {
            text.append(first.plusHours(hour));
            for (Map.Entry<Quantity, double[]> column : table.columns().entrySet()) {
                text.append(',').append(plain(column.getValue()[hour]));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String key, String value) {
        text.append("# ").append(key).append(": ").append(value).append('\n');
    }

    /** Header entries end with their line. */
    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    /** At most four decimals and no trailing zeros. */
    private static String plain(double value) {
        long whole = Math.round(value);
        if (whole == value) {
            return Long.toString(whole);
        }
        String text = String.format(Locale.ROOT, "%.4f", value);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.charAt(end - 1) == '.' ? text.substring(0, end - 1) : text.substring(0, end);
    }
}
