package org.warmvat.log;

import java.util.Arrays;

/** Values at rising times, with straight lines between and held outside. */
public final class Readings {

    private final double[] timeS;
    private final double[] values;

    /**
     * Takes the values.
     *
     * @param timeS rising times, s since the log's start; at least one
     * @param values one for each
     */
    public Readings(double[] timeS, double[] values) {
        if (timeS.length == 0 || timeS.length != values.length) {
            throw new IllegalArgumentException(timeS.length + " times, " + values.length + " values");
        }
        this.timeS = timeS.clone();
        this.values = values.clone();
    }

    /** How many. */
    public int size() {
        return values.length;
    }

    /** All times; a copy. */
    public double[] timesS() {
        return timeS.clone();
    }

    /** All values; a copy. */
    public double[] values() {
        return values.clone();
    }

    /** Value at a time. */
    public double at(double t) {
        int found = Arrays.binarySearch(timeS, t);
        if (found >= 0) {
            return values[found];
        }
        int after = -found - 1;
        if (after == 0) {
            return values[0];
        }
        if (after == timeS.length) {
            return values[timeS.length - 1];
        }
        double share = (t - timeS[after - 1]) / (timeS[after] - timeS[after - 1]);
        return values[after - 1] + share * (values[after] - values[after - 1]);
    }
}
