package org.warmvat.engine;

import java.util.stream.IntStream;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Carries a network over intervals by {@link TreeStep}s: chooses their length, finds switchings inside them. */
final class FastIntegration {

    /** Error allowed in a step at the slurry, K. */
    private static final double SLURRY_TOLERANCE_K = 2e-5;

    /** Error allowed in a step at a circuit, K. */
    private static final double CIRCUIT_TOLERANCE_K = 0.01;

    /** A switching is placed to within this of its threshold, K. */
    private static final double THRESHOLD_K = 1e-5;

    private static final double SHORTEST_STEP_S = 1e-3;
    private static final double AFTER_SWITCH_S = 60;
    private static final double MOST_GROWTH = 4;
    private static final double LEAST_SHRINKING = 0.15;
    private static final double CAUTION = 0.9;
    private static final int MOST_PLACINGS = 30;

    private final State state;
    private final HourRecord record;
    private final Network network;
    private final Switchboard switchboard;
    private final FastWatches watches;
    private final TreeStep step;
    private final int[] steered;
    private final double[] toleranceK;
    private double usualStepS = Hours.HOUR_S;
    private int mostEager;

    FastIntegration(Network network, State state, HourRecord record) {
        this.network = network;
        this.state = state;
        this.record = record;
        switchboard = new Switchboard(network);
        step = new TreeStep(network, state);

        steered = IntStream.range(0, network.nodes().size())
                .filter(i -> !network.nodes().get(i).startsSteady())
                .toArray();
        watches = new FastWatches(network, record, steered);
        toleranceK = IntStream.of(steered)
                .mapToDouble(i -> i == 0 ? SLURRY_TOLERANCE_K : CIRCUIT_TOLERANCE_K)
                .toArray();
    }

    /** Integrates over an interval without jumps. */
    void over(Interval interval) {
        network.enter(interval);
        step.restart();
        double timeS = interval.startS();
        switchboard.settle(timeS, state, record);
        watches.begin(timeS, state);
        while (timeS < interval.endS()) {
            timeS = advance(timeS, interval.endS());
        }
        switchboard.settle(timeS, state, record);
    }

    /** Takes one step that is accurate enough, cut short at the first switching; returns its end. */
    private double advance(double timeS, double endS) {
        double left = endS - timeS;
        double stepS = accurateStepS(timeS, left);
        double nowS = stepS == left ? endS : timeS + stepS;
        if (furthest(nowS) < 0) {
            accept(timeS, stepS, nowS);
            step.advance();
            return nowS;
        }
        stepS = place(timeS, stepS, nowS);
        nowS = stepS == left ? endS : timeS + stepS;
        accept(timeS, stepS, nowS);
        switchboard.move(mostEager, state, record);
        switchboard.settle(nowS, state, record);
        watches.begin(nowS, state);
        step.restart();
        usualStepS = Math.min(usualStepS, AFTER_SWITCH_S);
        return nowS;
    }

    /** Tries steps until one is accurate enough; suggests the next. */
    private double accurateStepS(double timeS, double left) {
        double stepS = usualStepS > 0.9 * left ? left : usualStepS;
        double error = attempt(timeS, stepS);
        while (error > 1 && stepS > SHORTEST_STEP_S) {
            stepS *= Math.max(LEAST_SHRINKING, CAUTION / Math.cbrt(error));
            error = attempt(timeS, stepS);
        }
        double growth = Math.min(MOST_GROWTH, CAUTION / Math.cbrt(Math.max(error, 1e-6)));
        // a step cut by the interval's end says little against a longer one
        usualStepS = Math.min(Hours.HOUR_S, stepS == left ? Math.max(usualStepS, growth * stepS) : growth * stepS);
        return stepS;
    }

    /** Tries a step; returns its error over what is allowed. */
    private double attempt(double timeS, double stepS) {
        step.attempt(timeS, stepS, state);
        double error = 0;
        for (int i = 0; i < steered.length; i++) {
            error = Math.max(error, step.errorK(steered[i], stepS) / toleranceK[i]);
        }
        return error;
    }

    /** Largest margin of any switch at the end of the step just tried; notes whose it is. */
    private double furthest(double timeS) {
        double furthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < switchboard.size(); i++) {
            double margin = switchboard.margin(i, timeS, step.result());
            if (margin > furthest) {
                furthest = margin;
                mostEager = i;
            }
        }
        return furthest;
    }

    /**
     * Finds the step that ends at the first switching, by false position on the largest margin; the step of that length is the
     * last one tried.
     */
    private double place(double timeS, double stepS, double nowS) {
        double lowS = 0;
        double low = furthestNow(timeS);
        double highS = stepS;
        double high = furthest(nowS);
        for (int round = 0; round < MOST_PLACINGS && highS - lowS > SHORTEST_STEP_S; round++) {
            double share = Math.max(0.02, Math.min(0.98, low / (low - high)));
            double tryS = lowS + share * (highS - lowS);
            step.attempt(timeS, tryS, state);
            double margin = furthest(timeS + tryS);
            if (Math.abs(margin) <= THRESHOLD_K) {
                return tryS;
            }
            if (margin < 0) {
                lowS = tryS;
                low = margin;
                high /= 2;
            } else {
                highS = tryS;
                high = margin;
                low /= 2;
            }
        }
        step.attempt(timeS, highS, state);
        furthest(timeS + highS);
        return highS;
    }

    private double furthestNow(double timeS) {
        double furthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < switchboard.size(); i++) {
            furthest = Math.max(furthest, switchboard.margin(i, timeS, state));
        }
        return furthest;
    }

    private void accept(double timeS, double stepS, double nowS) {
        watches.overStep(timeS, stepS, nowS, state, step);
        step.addMeters(stepS, record.meters());
        state.set(step.result());
    }
}
