package org.warmvat.log;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A rate that is constant from row to row: each value holds over the step that ends at its row; nothing before the first. Where a value
 * comes after more than three steps without one, it tells of its own step only, and the rest is a hole: the value stands there too, and
 * {@link #isKnown} says that it is none.
 */
public final class Steps {

    private static final double STEPS_OF_A_GAP = 3;
    private static final double STEPS_OF_A_HOLE = 1.5;
    private static final double UNEVEN = 0.1;
    private static final double MOST_ARE_EVEN = 0.75;

    private final double[] endS;
    private final double[] rates;
    private final double[] knownFromS;
    private final double medianS;
    private final boolean even;

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
        double[] lengths = lengths(endS);
        double[] sorted = Arrays.stream(lengths).sorted().toArray();
        medianS = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
        even = Arrays.stream(lengths)
                        .filter(length -> Math.abs(length - medianS) <= UNEVEN * medianS)
                        .count()
                >= MOST_ARE_EVEN * lengths.length;
        knownFromS = endS.clone();
        Arrays.setAll(knownFromS, i -> endS[i] - (lengths[i] > STEPS_OF_A_GAP * medianS ? medianS : lengths[i]));
    }

    private Steps(Steps other, int first, double zeroS) {
        endS = shifted(other.endS, first, zeroS);
        rates = Arrays.copyOfRange(other.rates, first, other.rates.length);
        knownFromS = shifted(other.knownFromS, first, zeroS);
        medianS = other.medianS;
        even = other.even;
    }

    private static double[] lengths(double[] endS) {
        return IntStream.range(0, endS.length)
                .mapToDouble(i -> endS[i] - (i == 0 ? 0 : endS[i - 1]))
                .toArray();
    }

    private static double[] shifted(double[] timeS, int first, double zeroS) {
        return Arrays.stream(timeS, first, timeS.length).map(t -> t - zeroS).toArray();
    }

    /** Whether a value covers a time. */
    public boolean isKnown(double t) {
        int step = stepOf(t);
        return step < rates.length && t >= knownFromS[step];
    }

    /** How much of a span no value covers, s. */
    double unknownS(double fromS, double toS) {
        double unknown = endS.length == 0 ? toS - fromS : Math.max(0, toS - Math.max(fromS, endS[endS.length - 1]));
        for (int i = stepOf(fromS); i < endS.length && (i == 0 || endS[i - 1] < toS); i++) {
            double holeS = i == 0 ? 0 : endS[i - 1];
            unknown += Math.max(0, Math.min(toS, knownFromS[i]) - Math.max(fromS, holeS));
        }
        return unknown;
    }

    /**
     * By how much the rates about single missing rows within a span differ, over their length. Where rows are uneven anyway none is
     * missing.
     */
    double doubt(double fromS, double toS) {
        double doubt = 0;
        for (int i = Math.max(1, stepOf(fromS)); even && i < endS.length && endS[i - 1] < toS; i++) {
            double length = endS[i] - endS[i - 1];
            if (endS[i] - medianS > fromS && length > STEPS_OF_A_HOLE * medianS) {
                doubt += Math.abs(rates[i] - rates[i - 1]) * (length - medianS);
            }
        }
        return doubt;
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
        return new Steps(this, stepOf(zeroS), zeroS);
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
