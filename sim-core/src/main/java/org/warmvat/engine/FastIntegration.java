package org.warmvat.engine;

import java.util.stream.IntStream;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Carries a network over intervals by {@link ModalStep}s, from switching to switching. */
final class FastIntegration {

    private static final double SHORTEST_STEP_S = 0.05;
    /** A switching is placed until its margin is this near its threshold, K. */
    private static final double PLACED_WITHIN_K = 1e-6;

    /** A margin that grazes its threshold is followed no further than this. */
    private static final int MOST_PLACINGS = 12;

    private static final double LEAST_SHRINKING = 0.1;
    private static final double MOST_GROWTH = 8;

    /** After a first step the stir of a jump decays: the next is tried this much longer whatever the first one's error. */
    private static final double USUAL_GROWTH = 8;

    /** Order of the error: a parabola misses by the cube of a step's length, lasting as long as the step. */
    private static final double ONE_OVER_ORDER = 0.25;

    private static final double CAUTION = 0.9;

    private final State state;
    private final HourRecord record;
    private final Network network;
    private final Switchboard switchboard;
    private final FastWatches watches;
    private final ModeShelf shelf;
    private ModalStep step;
    private SwitchSearch search;
    private double firstStepS = Hours.HOUR_S;
    private double nextStepS;
    private boolean first;

    FastIntegration(Network network, State state, HourRecord record, ModeShelf shelf) {
        this.network = network;
        this.state = state;
        this.record = record;
        switchboard = new Switchboard(network);
        watches = new FastWatches(network, record);
        this.shelf = shelf;
    }

    /** Integrates over an interval without jumps. */
    void over(Interval interval) {
        network.enter(interval);
        double timeS = interval.startS();
        if (step == null) {
            step = new ModalStep(network, switchboard, state, fed(timeS));
            search = new SwitchSearch(switchboard, step);
        }
        begin(timeS);
        while (timeS < interval.endS()) {
            timeS = advance(timeS, interval.endS());
        }
        step.export(state);
        switchboard.settle(timeS, state, record);
    }

    /** The nodes that receive heat from elsewhere than their neighbours: all live ones, and the layers next to the weather. */
    private int[] fed(double timeS) {
        Flows slow = network.newSlowFlows();
        network.surround(timeS, slow);
        return IntStream.range(0, network.parents().length)
                .filter(node -> node < network.liveNodes() || slow.feeds(node))
                .toArray();
    }

    /** Begins after a jump or a switching: switches move that want to, and everything is asked anew. */
    private void begin(double timeS) {
        switchboard.settle(timeS, state, record);
        step.begin(shelf.suiting(step.ask(timeS, state)));
        first = true;
        nextStepS = firstStepS;
    }

    /** Takes one step, cut short at the first switching; returns its end. */
    private double advance(double timeS, double endS) {
        double left = endS - timeS;
        double mostS = accurateStepS(timeS, left);
        boolean switches = false;
        double crossingS = search.crossingS(timeS);
        for (int placings = 0; crossingS <= mostS && !switches && placings <= MOST_PLACINGS; placings++) {
            checkFound(step.endAt(timeS, crossingS), timeS);
            double marginK = step.margin(Parabola.END);
            switches = Math.abs(marginK) < PLACED_WITHIN_K || (placings == MOST_PLACINGS && marginK > 0);
            crossingS = switches ? Double.POSITIVE_INFINITY : search.nearbyS(timeS);
        }
        double stepS = step.sinceS(Parabola.END);
        double nowS = stepS == left ? endS : timeS + stepS;
        watches.over(step, timeS);
        step.addMeters(record.meters());
        step.advance();
        if (switches) {
            switchboard.furthest(nowS, step.start());
            int mover = switchboard.foremost();
            step.export(state);
            switchboard.move(mover, state, record);
            begin(nowS);
        }
        return nowS;
    }

    /** Tries steps until one is accurate enough; plans the next. */
    private double accurateStepS(double timeS, double left) {
        double stepS = onGrid(nextStepS, left);
        double error = step.attempt(timeS, stepS);
        boolean rejected = false;
        // an error that is not a number is no better than a large one
        while (!(error <= 1) && stepS > SHORTEST_STEP_S) {
            double factor = Math.max(LEAST_SHRINKING, CAUTION * Math.pow(error, -ONE_OVER_ORDER));
            stepS = onGrid(factor > LEAST_SHRINKING ? factor * stepS : LEAST_SHRINKING * stepS, left);
            error = step.attempt(timeS, stepS);
            rejected = true;
        }
        checkFound(error < Double.POSITIVE_INFINITY, timeS);
        double growth = Math.min(MOST_GROWTH, CAUTION * Math.pow(Math.max(error, 1e-9), -ONE_OVER_ORDER));
        if (first) {
            first = false;
            firstStepS = rejected ? stepS : Math.min(Hours.HOUR_S, firstAfter(stepS, growth, stepS == left));
        }
        nextStepS = Math.max(USUAL_GROWTH, growth) * stepS;
        return stepS;
    }

    /** Refuses a step in which no heats and temperatures were found that agree. */
    private static void checkFound(boolean found, double timeS) {
        if (!found) {
            throw new EngineFailure("the fast engine could not go on at hour " + (int) (timeS / Hours.HOUR_S)
                    + ": no temperatures agree with the heats that they make");
        }
    }

    /** First step after the next jump; a step cut by what was left says little against a longer one. */
    private double firstAfter(double stepS, double growth, boolean cut) {
        return cut ? Math.max(firstStepS, growth * stepS) : growth * Math.max(stepS, 0.5 * firstStepS);
    }

    /**
     * The longest step no longer than wished of those that are an hour, its half, its quarter and so on, for which the modes
     * remember their decays; all that is left where that is no longer.
     */
    private static double onGrid(double wishedS, double left) {
        if (left <= wishedS) {
            return left;
        }
        double stepS = Hours.HOUR_S;
        while (stepS > wishedS || stepS > left) {
            stepS *= 0.5;
        }
        return stepS;
    }
}
