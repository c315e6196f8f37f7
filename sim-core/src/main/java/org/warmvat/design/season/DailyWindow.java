package org.warmvat.design.season;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.physics.Require;

/**
 * A stretch of time that returns every day; it may cross midnight.
 *
 * @param startSecondOfDay start, seconds after midnight of the clock, 0 up to but not including 86400
 * @param durationS length, s, above 0 and up to 86400
 */
public record DailyWindow(
        @Key(
                name = "start",
                says = "Start, by the weather file's clock",
                pattern = DailySchedule.TIME,
                form = "a time such as \"08:00\"")
        double startSecondOfDay,

        @Key(name = "hours", says = "Length", range = "0.001 to 24 h", times = 3600)
        double durationS) {

    /** Seconds in a day. */
    public static final double DAY_S = 86_400;

    /** The whole day. */
    public static final DailyWindow ALL_DAY = new DailyWindow(0, DAY_S);

    /** Refuses a start or a length out of range. */
    public DailyWindow {
        Require.within("start of a window in s", startSecondOfDay, 0, Math.nextDown(DAY_S));
        Ranges.check(DailyWindow.class, startSecondOfDay, durationS);
    }
}
