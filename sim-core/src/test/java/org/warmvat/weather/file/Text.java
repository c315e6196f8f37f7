package org.warmvat.weather.file;

import java.time.LocalDateTime;
import java.util.function.IntFunction;

/** Builds the text of weather files for tests. */
public final class Text {
    public static final String HEADER = """
            # warmvat weather 1
            # site: Thornacre (invented)
            # latitude_deg: 53.1
            # longitude_deg: -2.4
            # elevation_m: 120
            # utc_offset_h: 0
            # stamp: hour_end
            """;
    /** Lines before the first row when {@link #HEADER} and a line of names stand there. */
    public static final int LEAD_LINES = 8;

    private Text() {}

    /** A file of hours that end at 01:00 on the first of January 2025 and after, with cells for each hour. */
    public static String hours(String names, int hours, IntFunction<String> cells) {
        return rows(HEADER + "time," + names + "\n", LocalDateTime.of(2025, 1, 1, 1, 0), hours, cells);
    }

    public static String rows(String lead, LocalDateTime first, int hours, IntFunction<String> cells) {
        StringBuilder text = new StringBuilder(lead);
        for (int i = 0; i < hours; i++) {
            text.append(first.plusHours(i)).append(',').append(cells.apply(i)).append('\n');
        }
        return text.toString();
    }

    /** Replaces a line, counted from 1; an empty replacement takes it out. */
    public static String withLine(String text, int line, String replacement) {
        String[] lines = text.split("\n", -1);
        StringBuilder result = new StringBuilder();
        for (int i = 0; i < lines.length; i++) {
            String now = i == line - 1 ? replacement : lines[i];
            if (!now.isEmpty()) {
                result.append(now).append('\n');
            }
        }
        return result.toString();
    }
}
