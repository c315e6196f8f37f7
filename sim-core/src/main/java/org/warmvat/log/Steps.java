package org.warmvat.log;

import java.util.Arrays;

/** A rate that is constant from row to row: each value holds over the step that ends at its row; nothing before the first. */
public final class Steps {

    private final double[] endS;
    private final double[] rates;

    /**
     * Takes the rates.
     *
     * @param endS rising ends of the steps, s since the log's start; the first step begins at 0
     * @param rates the rate over each step
     */
    public Steps(double[] endS, double[] rates) {
        if (endS.length != rates.length) {
            throw new IllegalArgumentException(endS.length + " steps, " + rates.length + " rates");
        }
        this.endS = endS.clone();
        this.rates = rates.clone();
    }

    /** The rate at a time that lies on no edge; 0 outside. */
    public double at(double t) {
        int step = stepOf(t);
        return t < 0 || step == rates.length ? 0 : rates[step];
    }

    /** The next edge strictly after a time; infinite after the last. */
    public double nextEdgeS(double t) {
        if (t < 0) {
            return 0;
        }
        int step = stepOf(t);
        return step == endS.length ? Double.POSITIVE_INFINITY : endS[step];
    }

    private int stepOf(double t) {
        int found = Arrays.binarySearch(endS, t);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** The steps from a moment on, counted from it. */
    Steps since(double zeroS) {
        int first = stepOf(zeroS);
        double[] ends = Arrays.copyOfRange(endS, first, endS.length);
        return new Steps(
                Arrays.stream(ends).map(end -> end - zeroS).toArray(), Arrays.copyOfRange(rates, first, rates.length));
    }

    /** Mean over a span. */
    public double mean(double fromS, double toS) {
        double sum = 0;
        double t = fromS;
        while (t < toS) {
            double next = Math.min(toS, nextEdgeS(t));
            sum += (next - t) * at(0.5 * (t + next));
            t = next;
        }
        return sum / (toS - fromS);
    }

    /** Integral over the whole. */
    public double total() {
        double sum = 0;
        double from = 0;
        for (int i = 0; i < endS.length; i++) {
            sum += rates[i] * (endS[i] - from);
            from = endS[i];
        }
        return sum;
    }
}
