package org.warmvat.engine;

import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/** Heat into the root that jumps at announced times. */
final class Steps implements Part {
    private final double[] edgesS;
    private final double[] watts;
    private final int meter;
    private double now;

    /** Heat {@code watts[i]} from {@code edgesS[i]} to {@code edgesS[i + 1]}, nothing outside. */
    Steps(double[] edgesS, double[] watts, int meter) {
        this.edgesS = edgesS;
        this.watts = watts;
        this.meter = meter;
    }

    @Override
    public double nextJumpS(double timeS) {
        for (double edge : edgesS) {
            if (edge > timeS) {
                return edge;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public void enter(Interval interval) {
        now = 0;
        for (int i = 0; i < watts.length; i++) {
            if (interval.middleS() > edgesS[i] && interval.middleS() < edgesS[i + 1]) {
                now = watts[i];
            }
        }
    }

    @Override
    public void contribute(double timeS, State state, Flows flows) {
        flows.heat(0, now, meter);
    }
}
