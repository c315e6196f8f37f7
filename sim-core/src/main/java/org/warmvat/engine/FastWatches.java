package org.warmvat.engine;

import org.warmvat.network.Network;
import org.warmvat.network.Watch;

/** Times the watched conditions over the fast engine's steps; a beginning or end is placed on the step's own solution. */
final class FastWatches {

    /** Beginnings and ends are placed to this, s. */
    private static final double CROSSING_S = 0.05;

    private final Watch[] conditions;
    private final HourRecord record;

    FastWatches(Network network, HourRecord record) {
        conditions =
                network.watches().stream().map(Network.NamedWatch::condition).toArray(Watch[]::new);
        this.record = record;
    }

    /** Counts a step. */
    void over(ModalStep step, double timeS) {
        record.seeSlurry(step.start().nodeC(0));
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            record.seeSlurry(step.at(m).nodeC(0));
        }
        for (int i = 0; i < conditions.length; i++) {
            double beforeS = 0;
            double before = conditions[i].margin(timeS, step.start());
            record.seeWatch(i, before);
            for (int m = 0; m < Parabola.INSTANTS; m++) {
                double atS = step.sinceS(m);
                double margin = conditions[i].margin(timeS + atS, step.at(m));
                record.seeWatch(i, margin);
                if (before > 0 != margin > 0) {
                    double crossingS = crossingS(i, step, timeS, beforeS, atS, before > 0);
                    record.addWatch(i, before > 0 ? crossingS - beforeS : atS - crossingS);
                } else if (margin > 0) {
                    record.addWatch(i, atS - beforeS);
                }
                beforeS = atS;
                before = margin;
            }
        }
    }

    private double crossingS(int index, ModalStep step, double timeS, double fromS, double toS, boolean held) {
        double lowS = fromS;
        double highS = toS;
        while (highS - lowS > CROSSING_S) {
            double middleS = 0.5 * (lowS + highS);
            if (conditions[index].margin(timeS + middleS, step.after(middleS)) > 0 == held) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return 0.5 * (lowS + highS);
    }
}
