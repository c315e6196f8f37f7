package org.warmvat.weather;

/** Which moment of its hour a row's time names; temperatures, humidity and wind hold at that moment (model 4.1). */
public enum Stamp {
    /** The hour's beginning. */
    HOUR_START("hour_start", 0),
    /** Half an hour into it. */
    HOUR_MIDDLE("hour_middle", 30),
    /** The hour's end. */
    HOUR_END("hour_end", 60);

    private final String key;
    private final int minutesIntoHour;

    Stamp(String key, int minutesIntoHour) {
        this.key = key;
        this.minutesIntoHour = minutesIntoHour;
    }

    /** The word used in files. */
    public String key() {
        return key;
    }

    /** From the hour's beginning to the stamp: 0, 30 or 60. */
    public int minutesIntoHour() {
        return minutesIntoHour;
    }

    /** From the hour's beginning to the stamp, seconds. */
    public double secondsIntoHour() {
        return 60.0 * minutesIntoHour;
    }
}
