package org.warmvat.weather.file;

import java.util.Arrays;
import org.warmvat.weather.Quantity;

/** Values between rows that follow each other in time, on the straight lines from row to row. */
final class StraightLines {

    private static final int HOUR_MIN = 60;
    private static final double MOST_APART_MIN = 2.0 * HOUR_MIN;

    private final RawRows rows;
    private final double[] minutes;
    private final int from;
    private final int to;

    /**
     * The rows of a run.
     *
     * @param rows all rows
     * @param minutes the time of each, rising within the run
     * @param from the run's first row
     * @param to the first row after it
     */
    StraightLines(RawRows rows, double[] minutes, int from, int to) {
        this.rows = rows;
        this.minutes = minutes;
        this.from = from;
        this.to = to;
    }

    /** On the straight line between two rows not more than two hours apart; beyond the ends the nearest within the hour. */
    double at(Quantity quantity, double minute) {
        int right = firstFrom(minute);
        if (right < to && minutes[right] == minute) {
            return rows.value(quantity, right);
        }
        int left = right - 1;
        if (left < from || right >= to) {
            int end = left < from ? right : left;
            return Math.abs(minutes[end] - minute) <= HOUR_MIN ? rows.value(quantity, end) : Double.NaN;
        }
        double span = minutes[right] - minutes[left];
        double share = (minute - minutes[left]) / span;
        return span <= MOST_APART_MIN
                ? rows.value(quantity, left) + share * (rows.value(quantity, right) - rows.value(quantity, left))
                : Double.NaN;
    }

    /** Mean over an hour of the straight lines; of the rows in it where one of its ends is not known. */
    double mean(Quantity quantity, double begin, double end) {
        double lines = 0;
        double plain = 0;
        int count = 0;
        double before = begin;
        double value = at(quantity, begin);
        for (int row = firstFrom(begin); row < to && minutes[row] < end; row++) {
            double here = rows.value(quantity, row);
            if (!Double.isNaN(here) && minutes[row] > begin) {
                lines += (minutes[row] - before) * (value + here) / 2;
                before = minutes[row];
                value = here;
            }
            plain += Double.isNaN(here) ? 0 : here;
            count += Double.isNaN(here) ? 0 : 1;
        }
        lines += (end - before) * (value + at(quantity, end)) / 2;
        return count == 0 ? Double.NaN : Double.isNaN(lines) ? plain / count : lines / HOUR_MIN;
    }

    /** The first row at or after a time. */
    private int firstFrom(double minute) {
        int found = Arrays.binarySearch(minutes, from, to, minute);
        return found >= 0 ? found : -found - 1;
    }
}
