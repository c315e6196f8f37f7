package org.warmvat.cli.input;

import org.warmvat.design.DailyWindow;

/** Times of day and stretches of the day as design files write them. */
final class Clock {

    /** Pattern of a time of day. */
    static final String TIME = "^([01][0-9]|2[0-3]):[0-5][0-9]$";

    /** Pattern of a stretch of the day; its end may be 24:00. */
    static final String STRETCH = "^([01][0-9]|2[0-3]):[0-5][0-9]-(([01][0-9]|2[0-3]):[0-5][0-9]|24:00)$";

    private Clock() {}

    /** Seconds after midnight of a time that matches {@link #TIME}, or of 24:00. */
    static int secondOfDay(String time) {
        return Integer.parseInt(time.substring(0, 2)) * 3600 + Integer.parseInt(time.substring(3, 5)) * 60;
    }

    /** Whether a stretch that matches {@link #STRETCH} starts where it ends. */
    static boolean isEmpty(String stretch) {
        return stretch.substring(0, 5).equals(stretch.substring(6));
    }

    /** The window of a stretch that matches {@link #STRETCH}; an end before the start is the next day's. */
    static DailyWindow window(String stretch) {
        int start = secondOfDay(stretch.substring(0, 5));
        int length = secondOfDay(stretch.substring(6)) - start;
        return new DailyWindow(start, length > 0 ? length : length + DailyWindow.DAY_S);
    }
}
