package org.warmvat.engine;

import java.util.Arrays;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * Carries the live nodes over a stretch of time, the heat of everything slow being known, by steps of its own that adapt to the
 * circuits; ends at the first switching.
 */
final class LiveRun {

    /** Error allowed in a step at the slurry, K. */
    private static final double SLURRY_TOLERANCE_K = 1e-6;

    /** Error allowed in a step at a circuit, K. */
    private static final double CIRCUIT_TOLERANCE_K = 5e-5;

    /** Error allowed in a step at a circuit at most, K. */
    private static final double MOST_CIRCUIT_TOLERANCE_K = 1e-3;

    /** A circuit may err by this share of what is left to the nearest switching. */
    private static final double SHARE_OF_MARGIN = 1e-3;

    /** A switching is placed to within this, s. */
    private static final double PLACED_WITHIN_S = 0.002;

    /** A margin that creeps over its threshold counts as there when this near, K. */
    private static final double LEAST_MARGIN_K = 1e-8;

    /** A margin further off than this is not within {@link #PLACED_WITHIN_S} of its threshold, K. */
    private static final double NEAR_MARGIN_K = 0.1;

    /** A margin that grazes its threshold is followed no further than this. */
    private static final int MOST_PLACINGS = 12;

    private static final double SHORTEST_STEP_S = 1e-3;
    private static final double AFTER_SWITCH_S = 60;
    private static final double MOST_GROWTH = 4;
    private static final double LEAST_SHRINKING = 0.15;
    private static final double CAUTION = 0.9;

    private final int nodes;
    private final Switchboard switchboard;
    private final LiveStep step;
    private final LiveTrace trace;
    private final State now;
    private final State between;
    private final double[] meters;
    private double firstStepS = Hours.HOUR_S;
    private double usualStepS;
    private int mostEager;
    private boolean switches;

    LiveRun(Network network, State like, SlowHeat slow, Switchboard switchboard) {
        this.switchboard = switchboard;
        nodes = network.liveNodes();
        step = new LiveStep(network, like, slow);
        trace = new LiveTrace(network, like);
        now = like.copy();
        between = like.copy();
        meters = new double[network.meters().size()];
    }

    /** The steps of the last run. */
    LiveTrace trace() {
        return trace;
    }

    /** Whether the last run ended at a switching. */
    boolean switches() {
        return switches;
    }

    /** The switch that moves at the end of the last run. */
    int mover() {
        return mostEager;
    }

    /** Starts with short steps, since something switched. */
    void afterSwitch() {
        firstStepS = Math.min(firstStepS, AFTER_SWITCH_S);
    }

    /** Keeps the last run: its meters count and its last length of step goes on. */
    void accept(double[] totals) {
        for (int i = 0; i < totals.length; i++) {
            totals[i] += meters[i];
        }
        firstStepS = usualStepS;
    }

    /** Rate of the slurry at the end of the last run, K/s. */
    double endSlurryKPerS() {
        return step.startRateKPerS(0);
    }

    /** Rate of the slurry at a state from which a run is to begin, K/s. */
    double slurryKPerS(double timeS, State from) {
        step.begin(timeS, from);
        return step.startRateKPerS(0);
    }

    /**
     * Runs.
     *
     * @param timeS beginning
     * @param endS end, unless a switch moves before
     * @param from state at the beginning
     * @return the end reached, s
     */
    double over(double timeS, double endS, State from) {
        now.setLive(from, nodes);
        trace.begin(timeS, from);
        Arrays.fill(meters, 0);
        step.begin(timeS, from);
        usualStepS = firstStepS;
        switches = false;
        double atS = timeS;
        while (atS < endS && !switches) {
            atS = advance(atS, endS);
        }
        return atS;
    }

    /** Takes one step that is accurate enough, cut short at the first switching; returns its end. */
    private double advance(double timeS, double endS) {
        double left = endS - timeS;
        double stepS = accurateStepS(timeS, left);
        double nowS = stepS == left ? endS : timeS + stepS;
        double margin = furthest(nowS, step.result());
        if (margin >= 0) {
            stepS = place(timeS, stepS, stepS == left);
            nowS = stepS == left ? endS : timeS + stepS;
            margin = furthest(nowS, step.result());
            switches = margin >= -placedWithinK(timeS, stepS, margin);
        } else if (stepS == left && margin > -NEAR_MARGIN_K) {
            switches = margin >= -placedWithinK(timeS, stepS, margin);
        }
        trace.add(step, nowS);
        step.addMeters(stepS, meters);
        now.setLive(step.result(), nodes);
        step.advance();
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
        step.attempt(timeS, stepS, now);
        step.findErrors();
        double error = step.errorK(0) / SLURRY_TOLERANCE_K;
        double circuitK = 0;
        for (int i = 1; i < nodes; i++) {
            circuitK = Math.max(circuitK, step.errorK(i));
        }
        if (circuitK <= error * CIRCUIT_TOLERANCE_K) {
            return error;
        }
        double marginK = -furthest(timeS + stepS, step.result());
        double toleranceK =
                Math.max(CIRCUIT_TOLERANCE_K, Math.min(MOST_CIRCUIT_TOLERANCE_K, SHARE_OF_MARGIN * marginK));
        return Math.max(error, circuitK / toleranceK);
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
     * crossing is sought on the cubic of the step that overshot, which costs no stage, and then stepped to. A crossing at the
     * very end of the run stays there, since everything slow has been stepped to it.
     */
    private double place(double timeS, double overshotS, boolean toTheEnd) {
        double stepS = overshotS;
        for (int placing = 0; placing < MOST_PLACINGS; placing++) {
            double triedS = stepS;
            double crossingS = crossingS(timeS, triedS);
            if (placing == 0 && toTheEnd && crossingS > overshotS - PLACED_WITHIN_S) {
                break;
            }
            stepS = crossingS;
            step.attempt(timeS, stepS, now);
            double margin = furthest(timeS + stepS, step.result());
            // a crossing at the very end of the step is where it is, however flat the margin
            boolean atEnd = stepS >= triedS;
            if (atEnd || stepS <= SHORTEST_STEP_S || margin <= placedWithinK(timeS, stepS, margin)) {
                break;
            }
        }
        return stepS;
    }

    /**
     * First zero of the largest margin on the cubic of the step just tried, s after its beginning: false position with the
     * standing end's margin halved (Illinois), never left of the zero.
     */
    private double crossingS(double timeS, double stepS) {
        double low = 0;
        double high = 1;
        double lowMargin = Math.min(0, furthest(timeS, now));
        double highMargin = furthest(timeS + stepS, step.result());
        double within = 0.1 * PLACED_WITHIN_S / stepS;
        while (high - low > within) {
            double share = lowMargin < highMargin ? lowMargin / (lowMargin - highMargin) : 0.5;
            // a trial so near an end that it could not be told from it goes a hair inside
            double tried = Math.max(low + 0.5 * within, Math.min(high - 0.5 * within, low + (high - low) * share));
            double margin = furthest(timeS + tried * stepS, within(tried, stepS));
            if (margin < 0) {
                low = tried;
                lowMargin = margin;
                highMargin *= 0.5;
            } else {
                high = tried;
                highMargin = margin;
                lowMargin *= 0.5;
            }
        }
        return high * stepS;
    }

    /** What the largest margin gains in {@link #PLACED_WITHIN_S} at the end of the step just tried, K. */
    private double placedWithinK(double timeS, double stepS, double margin) {
        double share = 1 - Math.min(0.5, PLACED_WITHIN_S / stepS);
        int mover = mostEager;
        double before = switchboard.margin(mover, timeS + share * stepS, within(share, stepS));
        return Math.abs(margin - before) + LEAST_MARGIN_K;
    }

    /** State at a share of the step just tried. */
    private State within(double share, double stepS) {
        between.setLive(now, nodes);
        for (int i = 0; i < nodes; i++) {
            between.setNodeC(
                    i,
                    Cubic.at(
                            share,
                            stepS,
                            now.nodeC(i),
                            step.result().nodeC(i),
                            step.startRateKPerS(i),
                            step.endRateKPerS(i)));
        }
        return between;
    }
}
