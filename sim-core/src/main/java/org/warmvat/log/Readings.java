package org.warmvat.log;

import java.util.Arrays;

/** Values at rising times, with straight lines between and held outside. */
public final class Readings {

    private static final double STEPS_OF_A_GAP = 3;

    private final double[] timeS;
    private final double[] values;
    private final double medianStepS;

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
        medianStepS = timeS.length < 2 ? Double.POSITIVE_INFINITY : Rows.medianStepS(timeS);
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

    /** The middle one of the steps between readings; infinite for a single one. */
    public double medianStepS() {
        return medianStepS;
    }

    /** The readings from one to another, both included, times counted from the first of them. */
    Readings between(int first, int last) {
        double[] cut = Arrays.copyOfRange(timeS, first, last + 1);
        return new Readings(shifted(cut, timeS[first]), Arrays.copyOfRange(values, first, last + 1));
    }

    /** All readings, times counted from another moment. */
    Readings since(double zeroS) {
        return new Readings(shifted(timeS, zeroS), values);
    }

    private static double[] shifted(double[] timeS, double zeroS) {
        return Arrays.stream(timeS).map(t -> t - zeroS).toArray();
    }

    /** Whether a reading is near a time: not in a gap of more than three median steps, nor so far before the first or after the last. */
    public boolean isKnown(double t) {
        double farS = STEPS_OF_A_GAP * medianStepS;
        int after = Arrays.binarySearch(timeS, t);
        if (after >= 0) {
            return true;
        }
        after = -after - 1;
        double beforeS = after == 0 ? t : timeS[after - 1];
        double afterS = after == timeS.length ? t : timeS[after];
        return Math.max(afterS - t, Math.max(t - beforeS, afterS - beforeS)) <= farS;
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
