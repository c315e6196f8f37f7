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

    /** Counts a step. */
    void over(ModalStep step, double timeS, double stepS) {
        record.seeSlurry(step.start().nodeC(0));
        for (int m = 0; m < Parabola.INSTANTS; m++) {
            record.seeSlurry(step.at(m).nodeC(0));
        }
        for (int i = 0; i < conditions.length; i++) {
            double beforeS = 0;
            double before = conditions[i].margin(timeS, step.start());
            record.seeWatch(i, before);
            double heldS = 0;
            for (int m = 0; m < Parabola.INSTANTS; m++) {
                double atS = Parabola.SHARE[m] * stepS;
                double margin = conditions[i].margin(timeS + atS, step.at(m));
                record.seeWatch(i, margin);
                heldS += held(i, step, timeS, beforeS, atS, before, margin);
                beforeS = atS;
                before = margin;
            }
            record.addWatch(i, heldS);
        }
    }

    private double held(
            int index, ModalStep step, double timeS, double fromS, double toS, double atFrom, double atTo) {
        if (atFrom > 0 == atTo > 0) {
            return atFrom > 0 ? toS - fromS : 0;
        }
        double lowS = fromS;
        double highS = toS;
        while (highS - lowS > CROSSING_S) {
            double middleS = 0.5 * (lowS + highS);
            if (conditions[index].margin(timeS + middleS, step.after(middleS)) > 0 == atFrom > 0) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        double crossingS = 0.5 * (lowS + highS);
        return atFrom > 0 ? crossingS - fromS : toS - crossingS;
    }
}
