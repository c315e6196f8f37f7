package org.warmvat.weather.file;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.WeatherRefused;

/**
 * Puts the rows of a file onto an unbroken row of hours: each row gets its hour, missing rows leave holes of at most six
 * hours, and a typical year whose months come from different years is laid onto 2025.
 */
final class Calendar {
    /** The longest gap that is filled, in the files' documentation. */
    static final int LONGEST_GAP_H = 6;

    private static final int TYPICAL_MOST_ROWS = 8784;

    private final RawRows rows;
    private final Stamp stamp;
    private final FileFaults faults;

    Calendar(RawRows rows, Stamp stamp, FileFaults faults) {
        this.rows = rows;
        this.stamp = stamp;
        this.faults = faults;
    }

    /**
     * Where each row belongs.
     *
     * @param startMinute beginning of the first hour, minutes since 1970 of the local clock
     * @param hours from the first row's hour to the last one's
     * @param rowOfHour the row of each hour, or -1 for a missing one
     */
    record Placed(long startMinute, int hours, int[] rowOfHour) {}

    /**
     * Places all rows.
     *
     * @param typical whether the kind of file is always a typical year
     * @param notes takes what was changed
     */
    Placed place(boolean typical, List<String> notes) throws WeatherRefused {
        if (rows.size() == 0) {
            faults.add("has no rows of weather");
            faults.refuseIfAny();
        }
        long[] starts = new long[rows.size()];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = rows.stampMinute(i) - stamp.minutesIntoHour();
        }
        if (typical || mixesYears(starts)) {
            lay(starts, notes);
        }
        return grid(starts);
    }

    /** Whether the year jumps where the month changes, in a file no longer than a year. */
    private static boolean mixesYears(long[] starts) {
        if (starts.length > TYPICAL_MOST_ROWS) {
            return false;
        }
        for (int i = 1; i < starts.length; i++) {
            long step = starts[i] - starts[i - 1];
            if (step <= 0 || step > 60 * (LONGEST_GAP_H + 1)) {
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
            if (month == 2 && day.getDayOfMonth() == 29) {
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
        } else if (step > 60 * (LONGEST_GAP_H + 1)) {
            faults.add(
                    rows.line(row),
                    String.format(
                            Locale.ROOT,
                            "%s comes after a gap of %d hours, expected rows for every hour (up to %d missing ones are"
                                    + " filled)",
                            found,
                            step / 60 - 1,
                            LONGEST_GAP_H));
        }
    }

    private static LocalDate day(long minutes) {
        return LocalDate.ofEpochDay(Math.floorDiv(minutes, RowTime.MINUTES_PER_DAY));
    }
}
