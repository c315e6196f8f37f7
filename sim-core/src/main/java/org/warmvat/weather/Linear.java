package org.warmvat.weather;

/**
 * Straight lines between values at stamps 3600 s apart, held before the first and after the last (model equation 4.1).
 * Time is in seconds since the weather's first hour began.
 */
public final class Linear {
    private static final double STEP_S = 3600;

    private final double firstStampS;
    private final double[] values;

    /**
     * Takes the values.
     *
     * @param firstStampS time of the first value
     * @param values finite, at least one; copied
     */
    public Linear(double firstStampS, double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("no values");
        }
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("not a finite value: " + value);
            }
        }
        this.firstStampS = firstStampS;
        this.values = values.clone();
    }

    /** Value at a time. */
    public double at(double secondsSinceStart) {
        double position = (secondsSinceStart - firstStampS) / STEP_S;
        if (position <= 0) {
            return values[0];
        }
        int last = values.length - 1;
        if (position >= last) {
            return values[last];
        }
        int i = (int) position;
        return values[i] + (position - i) * (values[i + 1] - values[i]);
    }

    /** Mean over a span of time longer than 0, exact for the straight lines. */
    public double mean(double fromS, double toS) {
        if (!(toS > fromS)) {
            throw new IllegalArgumentException("an empty span: " + fromS + " to " + toS);
        }
        double sum = 0;
        double t = fromS;
        while (t < toS) {
            double next = Math.min(toS, nextStamp(t));
            sum += (next - t) * (at(t) + at(next)) / 2;
            t = next;
        }
        return sum / (toS - fromS);
    }

    private double nextStamp(double t) {
        double next = firstStampS + STEP_S * (Math.floor((t - firstStampS) / STEP_S) + 1);
        return next > t ? next : next + STEP_S;
    }

    /** Time of the first value. */
    public double firstStampS() {
        return firstStampS;
    }

    /** How many values. */
    public int size() {
        return values.length;
    }

    /** Value at a stamp, counted from 0. */
    public double value(int stamp) {
        return values[stamp];
    }

    /** Mean of the values. */
    public double mean() {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
