package org.warmvat.weather.layout;

import java.util.OptionalLong;
import java.util.regex.Pattern;

/**
 * How a date and time is written: runs of {@code Y}, {@code M}, {@code D}, {@code h}, {@code m} and {@code s} stand for digits, any
 * other character for itself; a year of two digits is one of this century. A run beside another run takes as many digits as it has letters; a run between separators or
 * ends takes one digit or more. Seconds and fractions of zero at the end are ignored, and
 * so is the end of an interval after a slash. Hour 24 is midnight at the end of the
 * day; without minutes the time is on the hour.
 */
public final class TimeForm {
    /** The form of Warmvat's own file. */
    public static final TimeForm ISO = new TimeForm("YYYY-MM-DDThh:mm");

    private static final Pattern TAIL = Pattern.compile("(:00)?(\\.0+)?(/.*)?");
    private static final String LETTERS = "YMDhms";
    private static final String MAY_BE_ABSENT = "ms";
    private static final int SECONDS_PER_MINUTE = 60;
    private static final int CENTURY = 2000;

    private final String form;

    /** Takes a form that has year, month, day and hour once each, minutes and seconds at most once. */
    public TimeForm(String form) {
        this.form = form;
        for (int i = 0; i < LETTERS.length(); i++) {
            char letter = LETTERS.charAt(i);
            int first = form.indexOf(letter);
            int last = form.lastIndexOf(letter);
            boolean one = first < 0 || form.substring(first, last + 1).chars().allMatch(c -> c == letter);
            if (!one || (first < 0 && MAY_BE_ABSENT.indexOf(letter) < 0)) {
                throw new IllegalArgumentException("not a form of date and time: " + form);
            }
        }
    }

    /** The form as given. */
    public String form() {
        return form;
    }

    /** Minutes since 1970 of the clock in the text; empty when it does not read so or not on the minute. */
    public OptionalLong minutes(String text) {
        OptionalLong seconds = seconds(text);
        boolean onTheMinute = seconds.isPresent() && seconds.getAsLong() % SECONDS_PER_MINUTE == 0;
        return onTheMinute ? OptionalLong.of(seconds.getAsLong() / SECONDS_PER_MINUTE) : OptionalLong.empty();
    }

    /** Seconds since 1970 of the clock in the text; empty when it does not read so. */
    public OptionalLong seconds(String text) {
        int[] values = new int[LETTERS.length()];
        int at = 0;
        int i = 0;
        while (i < form.length()) {
            int field = LETTERS.indexOf(form.charAt(i));
            if (field < 0) {
                boolean same = at < text.length() && text.charAt(at) == form.charAt(i);
                if (!same) {
                    return OptionalLong.empty();
                }
                at++;
                i++;
                continue;
            }
            int run = run(form, i);
            int digits = digits(text, at);
            boolean fixed = isLetter(i + run) || isLetter(i - 1);
            int taken = fixed ? Math.min(run, digits) : digits;
            if (taken == 0 || taken > 4 || (fixed && taken < run)) {
                return OptionalLong.empty();
            }
            values[field] = RowTime.number(text, at, at + taken);
            at += taken;
            i += run;
        }
        boolean ends = at == text.length() || TAIL.matcher(text.substring(at)).matches();
        return ends && values[5] < SECONDS_PER_MINUTE ? seconds(values) : OptionalLong.empty();
    }

    private OptionalLong seconds(int[] values) {
        int year = form.contains("YYY") || values[0] >= 100 ? values[0] : CENTURY + values[0];
        OptionalLong minutes = RowTime.minutes(year, values[1], values[2], values[3], values[4]);
        return minutes.isPresent() ? OptionalLong.of(minutes.getAsLong() * SECONDS_PER_MINUTE + values[5]) : minutes;
    }

    private boolean isLetter(int at) {
        return at >= 0 && at < form.length() && LETTERS.indexOf(form.charAt(at)) >= 0;
    }

    private static int run(String form, int from) {
        int to = from;
        while (to < form.length() && form.charAt(to) == form.charAt(from)) {
            to++;
        }
        return to - from;
    }

    private static int digits(String text, int from) {
        int to = from;
        while (to < text.length() && text.charAt(to) >= '0' && text.charAt(to) <= '9') {
            to++;
        }
        return to - from;
    }

    @Override
    public String toString() {
        return form;
    }
}
