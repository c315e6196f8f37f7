package org.warmvat.weather.layout;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.OptionalLong;

/** Dates and times of rows as minutes since 1970 of the local clock, which makes them quick to compare. */
public final class RowTime {
    public static final int MINUTES_PER_DAY = 1440;

    private RowTime() {}

    /**
     * Reads {@code 2025-01-01T01:00}, also with a space for the T, with seconds of zero, and {@code 24:00} for midnight at
     * the end of the day.
     */
    public static OptionalLong isoMinutes(String text) {
        boolean shape = (text.length() == 16 || (text.length() == 19 && text.endsWith(":00")))
                && text.charAt(4) == '-'
                && text.charAt(7) == '-'
                && (text.charAt(10) == 'T' || text.charAt(10) == ' ')
                && text.charAt(13) == ':';
        if (!shape) {
            return OptionalLong.empty();
        }
        return minutes(
                number(text, 0, 4),
                number(text, 5, 7),
                number(text, 8, 10),
                number(text, 11, 13),
                number(text, 14, 16));
    }

    /** Minutes since 1970, empty when there is no such moment; hour 24 is midnight at the end of the day. */
    public static OptionalLong minutes(int year, int month, int day, int hour, int minute) {
        boolean time = hour >= 0 && minute >= 0 && minute < 60 && (hour < 24 || (hour == 24 && minute == 0));
        if (!time || year < 1800 || year > 2200) {
            return OptionalLong.empty();
        }
        try {
            long epochDay = LocalDate.of(year, month, day).toEpochDay();
            return OptionalLong.of(epochDay * MINUTES_PER_DAY + hour * 60L + minute);
        } catch (DateTimeException e) {
            return OptionalLong.empty();
        }
    }

    /** The whole number in a part of a text, -1 when it is none. */
    public static int number(String text, int from, int to) {
        int value = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = 10 * value + digit;
        }
        return to > from ? value : -1;
    }

    /** A moment of the local clock. */
    public static LocalDateTime moment(long minutes) {
        LocalDate date = LocalDate.ofEpochDay(Math.floorDiv(minutes, MINUTES_PER_DAY));
        return date.atStartOfDay().plusMinutes(Math.floorMod(minutes, MINUTES_PER_DAY));
    }

    /** Text of a moment, {@code 2025-01-01T01:00}. */
    public static String text(long minutes) {
        return moment(minutes).toString();
    }
}
