package org.warmvat.engine;

import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;

/** Heat into the root that jumps at announced times. */
final class Steps implements Part {
    private final double[] edgesS;
    private final double[] watts;
    private final Source heat;

    /** Heat {@code watts[i]} from {@code edgesS[i]} to {@code edgesS[i + 1]}, nothing outside. */
    Steps(double[] edgesS, double[] watts, String meter, Network.Assembly assembly) {
        this.edgesS = edgesS;
        this.watts = watts;
        heat = assembly.source(Network.SLURRY, assembly.meter(meter));
        assembly.part(this);
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
        heat.set(0);
        for (int i = 0; i < watts.length; i++) {
            if (interval.middleS() > edgesS[i] && interval.middleS() < edgesS[i + 1]) {
                heat.set(watts[i]);
            }
        }
    }
}
