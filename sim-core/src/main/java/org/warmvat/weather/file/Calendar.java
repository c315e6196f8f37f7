package org.warmvat.weather.file;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.RowTime;

/**
 * Puts the rows of a file onto an unbroken row of hours: each row gets its hour, missing rows leave holes of at most six
 * hours, and a typical year whose months come from different years is laid onto 2025.
 */
final class Calendar {
    /** The longest gap that is filled, in the files' documentation. */
    static final int LONGEST_GAP_H = 6;

    private static final int TYPICAL_MOST_ROWS = 8784;
    private static final int MOST_OFFSET_H = 14;
    private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);

    private RawRows rows;
    private final Stamp stamp;
    private final FileFaults faults;
    private final int longestGapH;

    private Calendar(RawRows rows, Stamp stamp, int fillHolesH, FileFaults faults) {
        this.rows = rows;
        this.stamp = stamp;
        this.faults = faults;
        this.longestGapH = Math.max(LONGEST_GAP_H, fillHolesH);
    }

    /**
     * Places all rows and fills their holes.
     *
     * @param typical whether the kind of file is always a typical year
     * @param notes takes what was changed
     */
    static HourlyTable table(
            RawRows rows,
            Stamp stamp,
            boolean typical,
            Site site,
            Reading reading,
            FileFaults faults,
            List<String> notes)
            throws WeatherRefused {
        Calendar calendar = new Calendar(rows, stamp, reading.fillHolesH(), faults);
        Placed placed = calendar.place(typical, notes);
        return new GapFilling(calendar.rows, placed, site, reading.fillHolesH(), faults, notes).table(stamp);
    }

    /**
     * Where each row belongs.
     *
     * @param startMinute beginning of the first hour, minutes since 1970 of the local clock
     * @param hours from the first row's hour to the last one's
     * @param rowOfHour the row of each hour, or -1 for a missing one
     */
    record Placed(long startMinute, int hours, int[] rowOfHour) {}

    private Placed place(boolean typical, List<String> notes) throws WeatherRefused {
        if (rows.size() == 0) {
            faults.add("has no rows of weather");
            faults.refuseIfAny();
        }
        long[] starts = starts();
        if (typical || mixesYears(starts)) {
            if (turnToNewYear(starts)) {
                starts = starts();
            }
            lay(starts, notes);
        }
        return grid(starts);
    }

    private long[] starts() {
        long[] starts = new long[rows.size()];
        Arrays.setAll(starts, i -> rows.stampMinute(i) - stamp.minutesIntoHour());
        return starts;
    }

    /** A whole typical year that another clock has moved begins in the evening before or some hours late: its hours go round. */
    private boolean turnToNewYear(long[] starts) {
        int last = starts.length - 1;
        boolean whole = starts.length >= 8760 && hourOfYear(starts[last] + 60) == hourOfYear(starts[0]);
        for (int i = 1; whole && i <= last; i++) {
            if (hourOfYear(starts[i]) == 0 && Math.min(i, starts.length - i) <= MOST_OFFSET_H) {
                rows = rows.rotated(i);
                return true;
            }
        }
        return false;
    }

    private static int hourOfYear(long minutes) {
        LocalDate day = day(minutes);
        int hour = Math.floorMod(minutes, RowTime.MINUTES_PER_DAY) / 60;
        return 24 * (31 * (day.getMonthValue() - 1) + day.getDayOfMonth() - 1) + hour;
    }

    /** Whether the year jumps where the month changes, in a file no longer than a year. */
    private boolean mixesYears(long[] starts) {
        if (starts.length > TYPICAL_MOST_ROWS) {
            return false;
        }
        for (int i = 1; i < starts.length; i++) {
            long step = starts[i] - starts[i - 1];
            if (step <= 0 || step > 60L * (longestGapH + 1)) {
                LocalDate before = day(starts[i - 1]);
                LocalDate after = day(starts[i]);
                if (before.getYear() != after.getYear() && before.getMonth() != after.getMonth()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Lays every hour onto 2025, and onto 2026 from where the months begin anew; drops leap days. */
    private void lay(long[] starts, List<String> notes) {
        int dropped = 0;
        int year = HourlyTable.TYPICAL_YEAR;
        int month = 0;
        for (int i = 0; i < starts.length; i++) {
            LocalDate day = day(starts[i]);
            if (day.getMonthValue() < month && i > 0) {
                year = HourlyTable.TYPICAL_YEAR + 1;
            }
            month = day.getMonthValue();
            if (MonthDay.from(day).equals(LEAP_DAY)) {
                starts[i] = Long.MIN_VALUE;
                dropped++;
            } else {
                long minuteOfDay = Math.floorMod(starts[i], RowTime.MINUTES_PER_DAY);
                starts[i] = day.withYear(year).toEpochDay() * RowTime.MINUTES_PER_DAY + minuteOfDay;
            }
        }
        notes.add("The weather is a typical year whose months come from different years: it was laid onto "
                + HourlyTable.TYPICAL_YEAR
                + (dropped == 0 ? "." : ", and " + dropped + " hours of 29 February were dropped."));
    }

    private Placed grid(long[] starts) throws WeatherRefused {
        int[] hourOfRow = new int[starts.length];
        long first = firstOf(starts);
        long before = first - 60;
        for (int i = 0; i < starts.length; i++) {
            if (starts[i] == Long.MIN_VALUE) {
                hourOfRow[i] = -1;
                continue;
            }
            checkStep(i, before, starts[i]);
            hourOfRow[i] = (int) ((starts[i] - first) / 60);
            before = starts[i];
        }
        faults.refuseIfAny();
        int hours = (int) ((before - first) / 60) + 1;
        int[] rowOfHour = new int[hours];
        Arrays.fill(rowOfHour, -1);
        for (int i = 0; i < hourOfRow.length; i++) {
            if (hourOfRow[i] >= 0) {
                rowOfHour[hourOfRow[i]] = i;
            }
        }
        return new Placed(first, hours, rowOfHour);
    }

    private static long firstOf(long[] starts) {
        int i = 0;
        while (i < starts.length - 1 && starts[i] == Long.MIN_VALUE) {
            i++;
        }
        return starts[i];
    }

    private void checkStep(int row, long before, long start) throws WeatherRefused {
        long step = start - before;
        if (step == 60) {
            return;
        }
        String found = "time " + RowTime.text(rows.stampMinute(row));
        String expected = row == 0 ? "" : ", expected an hour after " + RowTime.text(rows.stampMinute(row - 1));
        if (step <= 0) {
            String hint = step == 0 ? " (twice the same; daylight saving? times are standard time all year)" : "";
            faults.add(rows.line(row), found + " does not follow the row before" + expected + hint);
        } else if (step % 60 != 0) {
            faults.add(rows.line(row), found + " is not on the hour of the rows before" + expected);
        } else if (step > 60L * (longestGapH + 1)) {
            faults.add(
                    rows.line(row),
                    String.format(
                            Locale.ROOT,
                            "%s comes after a gap of %d hours, expected rows for every hour (%s)",
                            found,
                            step / 60 - 1,
                            isLeapDay(before + 60, start - 60)
                                    ? "29 February is left out: ask the service for leap days, or fill it by --fill-holes 24"
                                    : "up to " + longestGapH + " missing ones are filled; more by --fill-holes HOURS"));
        }
    }

    /** Whether hours from one to another are a day that holds 29 February, as many of it as the clocks allow. */
    private static boolean isLeapDay(long first, long last) {
        return last - first == RowTime.MINUTES_PER_DAY - 60
                && (MonthDay.from(day(first)).equals(LEAP_DAY)
                        || MonthDay.from(day(last)).equals(LEAP_DAY));
    }

    private static LocalDate day(long minutes) {
        return LocalDate.ofEpochDay(Math.floorDiv(minutes, RowTime.MINUTES_PER_DAY));
    }
}
