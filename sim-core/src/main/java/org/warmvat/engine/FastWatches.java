package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.Watch;

/** Times the watched conditions over the fast engine's steps; a beginning or end is placed on the step's cubic. */
final class FastWatches {

    /** Beginnings and ends are placed to this, s. */
    private static final double CROSSING_S = 0.05;

    private final Watch[] conditions;
    private final HourRecord record;
    private final double[] before;

    FastWatches(Network network, HourRecord record) {
        conditions =
                network.watches().stream().map(Network.NamedWatch::condition).toArray(Watch[]::new);
        this.record = record;
        before = new double[conditions.length];
    }

    /** Counts the steps of a stretch that begins after a jump, a switching or another stretch. */
    void over(LiveTrace trace) {
        record.seeSlurry(trace.at(0).nodeC(0));
        for (int i = 0; i < conditions.length; i++) {
            before[i] = conditions[i].margin(trace.startS(0), trace.at(0));
            record.seeWatch(i, before[i]);
        }
        for (int step = 0; step < trace.steps(); step++) {
            overStep(trace, step);
        }
    }

    private void overStep(LiveTrace trace, int step) {
        double stepS = trace.startS(step + 1) - trace.startS(step);
        record.seeSlurry(trace.at(step + 1).nodeC(0));
        for (int i = 0; i < conditions.length; i++) {
            double after = conditions[i].margin(trace.startS(step + 1), trace.at(step + 1));
            if (before[i] > 0 != after > 0) {
                double crossingS = crossingS(i, trace, step, stepS);
                record.addWatch(i, before[i] > 0 ? crossingS : stepS - crossingS);
            } else if (after > 0) {
                record.addWatch(i, stepS);
            }
            record.seeWatch(i, after);
            before[i] = after;
        }
    }

    private double crossingS(int index, LiveTrace trace, int step, double stepS) {
        double lowS = 0;
        double highS = stepS;
        while (highS - lowS > CROSSING_S) {
            double middleS = 0.5 * (lowS + highS);
            double margin = conditions[index].margin(trace.startS(step) + middleS, trace.within(step, middleS / stepS));
            if (margin > 0 == before[index] > 0) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return 0.5 * (lowS + highS);
    }
}
