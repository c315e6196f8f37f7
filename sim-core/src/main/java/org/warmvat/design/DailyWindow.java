package org.warmvat.design;

/**
 * A stretch of time that returns every day; it may cross midnight.
 *
 * @param startSecondOfDay start, seconds after midnight of the clock, 0 up to but not including 86400
 * @param durationS length, s, above 0 and up to 86400
 */
public record DailyWindow(double startSecondOfDay, double durationS) {

    /** Seconds in a day. */
    public static final double DAY_S = 86_400;

    /** The whole day. */
    public static final DailyWindow ALL_DAY = new DailyWindow(0, DAY_S);

    /** Refuses a start or a length out of range. */
    public DailyWindow {
        Ranges.within("start of a window in s", startSecondOfDay, 0, Math.nextDown(DAY_S));
        Ranges.above("length of a window in s", durationS, 0, DAY_S);
    }
}
