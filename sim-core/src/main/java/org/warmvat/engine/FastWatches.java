package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Watch;

/** Times the watched conditions over the fast engine's steps; a beginning or end is placed on the step's cubic. */
final class FastWatches {

    /** Beginnings and ends are placed to this, s. */
    private static final double CROSSING_S = 0.05;

    private final Watch[] conditions;
    private final HourRecord record;
    private final double[] before;
    private final StepCubic cubic;

    FastWatches(Network network, HourRecord record, StepCubic cubic) {
        conditions =
                network.watches().stream().map(Network.NamedWatch::condition).toArray(Watch[]::new);
        this.record = record;
        this.cubic = cubic;
        before = new double[conditions.length];
    }

    /** Looks at the state after a jump or switching. */
    void begin(double timeS, State state) {
        record.seeSlurry(state.nodeC(0));
        for (int i = 0; i < conditions.length; i++) {
            before[i] = conditions[i].margin(timeS, state);
            record.seeWatch(i, before[i]);
        }
    }

    /** Counts a step about to be accepted. */
    void overStep(double timeS, double stepS, double nowS, State from, State to) {
        record.seeSlurry(to.nodeC(0));
        for (int i = 0; i < conditions.length; i++) {
            double after = conditions[i].margin(nowS, to);
            if (before[i] > 0 != after > 0) {
                double crossingS = crossingS(i, timeS, stepS, from);
                record.addWatch(i, before[i] > 0 ? crossingS : stepS - crossingS);
            } else if (after > 0) {
                record.addWatch(i, stepS);
            }
            record.seeWatch(i, after);
            before[i] = after;
        }
    }

    private double crossingS(int index, double timeS, double stepS, State from) {
        double lowS = 0;
        double highS = stepS;
        while (highS - lowS > CROSSING_S) {
            double middleS = 0.5 * (lowS + highS);
            State between = cubic.at(middleS / stepS, stepS, from);
            if (conditions[index].margin(timeS + middleS, between) > 0 == before[index] > 0) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return 0.5 * (lowS + highS);
    }
}
