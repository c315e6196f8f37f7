package org.warmvat.engine;

import java.util.stream.IntStream;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Carries a network over intervals by {@link TreeStep}s: chooses their length, finds switchings inside them. */
final class FastIntegration {

    /** Error allowed in a step at the slurry, K. */
    private static final double SLURRY_TOLERANCE_K = 2e-6;

    /** Error allowed in a step at a circuit, K. */
    private static final double CIRCUIT_TOLERANCE_K = 1e-4;

    /** A switching is placed to within this, s. */
    private static final double PLACED_WITHIN_S = 0.002;

    /** A margin that creeps over its threshold counts as there when this near, K. */
    private static final double LEAST_MARGIN_K = 1e-8;

    /** A margin that grazes its threshold is followed no further than this. */
    private static final int MOST_PLACINGS = 12;

    private static final double SHORTEST_STEP_S = 1e-3;
    private static final double AFTER_SWITCH_S = 60;
    private static final double MOST_GROWTH = 4;
    private static final double LEAST_SHRINKING = 0.15;
    private static final double CAUTION = 0.9;

    private final State state;
    private final HourRecord record;
    private final Network network;
    private final Switchboard switchboard;
    private final FastWatches watches;
    private final StepCubic cubic;
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
        cubic = new StepCubic(step, steered, state);
        watches = new FastWatches(network, record, cubic);
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
        boolean switches = furthest(nowS, step.result()) >= 0;
        if (switches) {
            stepS = place(timeS, stepS);
            nowS = stepS == left ? endS : timeS + stepS;
            double margin = furthest(nowS, step.result());
            switches = margin >= -placedWithinK(timeS, stepS, margin);
        }
        accept(timeS, stepS, nowS);
        if (switches) {
            moveSwitches(nowS);
        } else {
            step.advance();
        }
        return nowS;
    }

    private void moveSwitches(double nowS) {
        switchboard.move(mostEager, state, record);
        switchboard.settle(nowS, state, record);
        watches.begin(nowS, state);
        step.restart();
        usualStepS = Math.min(usualStepS, AFTER_SWITCH_S);
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

    /** Largest margin of any switch at a state; notes whose it is. */
    private double furthest(double timeS, State at) {
        double furthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < switchboard.size(); i++) {
            double margin = switchboard.margin(i, timeS, at);
            if (margin > furthest) {
                furthest = margin;
                mostEager = i;
            }
        }
        return furthest;
    }

    /**
     * Shortens the step just tried, in which a switch moves, until it ends at the first switching or shortly before it. The
     * crossing is sought on the cubic of the step that overshot, which costs no stage, and then stepped to.
     */
    private double place(double timeS, double overshotS) {
        double stepS = overshotS;
        for (int placing = 0; placing < MOST_PLACINGS; placing++) {
            double triedS = stepS;
            stepS = crossingS(timeS, triedS);
            step.attempt(timeS, stepS, state);
            double margin = furthest(timeS + stepS, step.result());
            // a crossing at the very end of the step is where it is, however flat the margin
            boolean atEnd = stepS >= triedS;
            if (atEnd || stepS <= SHORTEST_STEP_S || margin <= placedWithinK(timeS, stepS, margin)) {
                break;
            }
        }
        return stepS;
    }

    /** First zero of the largest margin on the cubic of the step just tried, s after its beginning. */
    private double crossingS(double timeS, double stepS) {
        double low = 0;
        double high = 1;
        while ((high - low) * stepS > 0.1 * PLACED_WITHIN_S) {
            double middle = 0.5 * (low + high);
            if (furthest(timeS + middle * stepS, cubic.at(middle, stepS, state)) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * stepS;
    }

    /** What the largest margin gains in {@link #PLACED_WITHIN_S} at the end of the step just tried, K. */
    private double placedWithinK(double timeS, double stepS, double margin) {
        double share = 1 - Math.min(0.5, PLACED_WITHIN_S / stepS);
        int mover = mostEager;
        double before = switchboard.margin(mover, timeS + share * stepS, cubic.at(share, stepS, state));
        return Math.abs(margin - before) + LEAST_MARGIN_K;
    }

    private void accept(double timeS, double stepS, double nowS) {
        watches.overStep(timeS, stepS, nowS, state, step.result());
        step.addMeters(stepS, record.meters());
        state.set(step.result());
    }
}
