package org.warmvat.engine.reference;

import java.util.List;
import java.util.function.DoubleFunction;
import org.warmvat.engine.HourRecord;
import org.warmvat.network.Network;
import org.warmvat.network.State;
import org.warmvat.network.Watch;

/** Times the watched conditions over accepted steps, locating where they begin and end on the step's own interpolation. */
final class WatchKeeper {

    /** A condition's margin is sampled this often within a step. */
    private static final int SAMPLES = 4;

    /** Crossings are located to this, s. */
    private static final double CROSSING_S = 1e-3;

    private final List<Watch> conditions;
    private final HourRecord record;

    WatchKeeper(Network network, HourRecord record) {
        conditions = network.watches();
        this.record = record;
    }

    void overStep(double fromS, double toS, DoubleFunction<State> stateAt) {
        double[] before = margins(fromS, stateAt);
        double sampleS = fromS;
        for (int k = 1; k <= SAMPLES; k++) {
            double nextS = k == SAMPLES ? toS : fromS + (toS - fromS) * k / SAMPLES;
            double[] after = margins(nextS, stateAt);
            for (int i = 0; i < conditions.size(); i++) {
                record.addWatch(i, held(i, sampleS, nextS, before[i], after[i], stateAt));
            }
            before = after;
            sampleS = nextS;
        }
    }

    private double[] margins(double timeS, DoubleFunction<State> stateAt) {
        State state = stateAt.apply(timeS);
        record.seeSlurry(state.nodeC(0));
        double[] margins = new double[conditions.size()];
        for (int i = 0; i < margins.length; i++) {
            margins[i] = conditions.get(i).at(state);
            record.seeWatch(i, margins[i]);
        }
        return margins;
    }

    /** How long a condition held between two samples, s. */
    private double held(
            int index, double fromS, double toS, double before, double after, DoubleFunction<State> stateAt) {
        if (before > 0 == after > 0) {
            return before > 0 ? toS - fromS : 0;
        }
        double lowS = fromS;
        double highS = toS;
        while (highS - lowS > CROSSING_S) {
            double middleS = 0.5 * (lowS + highS);
            if (conditions.get(index).at(stateAt.apply(middleS)) > 0 == before > 0) {
                lowS = middleS;
            } else {
                highS = middleS;
            }
        }
        return before > 0 ? 0.5 * (lowS + highS) - fromS : toS - 0.5 * (lowS + highS);
    }
}
