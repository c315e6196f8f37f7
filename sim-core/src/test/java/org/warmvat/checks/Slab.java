package org.warmvat.checks;

import org.warmvat.engine.FastEngine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.envelope.LayerChain;
import org.warmvat.network.Flows;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.State;

/**
 * A layer of one temperature at first, then with a fluid on its outer face and nothing through its inner one.
 *
 * @param chain the layer in sub-nodes
 * @param startC where it starts
 * @param filmWPerM2K film of the fluid
 * @param fluidC the fluid
 */
record Slab(LayerChain chain, double startC, double filmWPerM2K, double fluidC) {

    /** Temperatures of the sub-nodes from inside to outside after a time, °C. */
    double[] afterS(double seconds) {
        Network.Assembly assembly = new Network.Assembly();
        int last = -1;
        for (LayerChain.Slice slice : chain.slices()) {
            last = assembly.node(new Network.Node("layer", slice.capacityJPerK(), last, startC, false));
        }
        assembly.part(new Stack(this, seconds));
        Network network = assembly.build();
        State state = network.initialState();
        int hours = (int) Math.ceil(seconds / Hours.HOUR_S);
        new FastEngine().run(network, state, new Hours(0, hours), HourSink.IGNORE);
        double[] celsius = new double[chain.slices().size()];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = state.nodeC(i);
        }
        return celsius;
    }

    /** Temperature of the outer face, where film and last half layer meet, °C. */
    double outerFaceC(double lastC) {
        double film = 1 / (filmWPerM2K * chain.outerAreaM2());
        return (lastC * film + fluidC * chain.outerHalfKPerW()) / (film + chain.outerHalfKPerW());
    }

    /** Everything flows until a time, nothing after it. */
    private static final class Stack implements Part {
        private final Slab slab;
        private final double endS;
        private final int last;
        private boolean flowing;

        Stack(Slab slab, double endS) {
            this.slab = slab;
            this.endS = endS;
            last = slab.chain().slices().size() - 1;
        }

        @Override
        public double nextJumpS(double timeS) {
            return timeS < endS ? endS : Double.POSITIVE_INFINITY;
        }

        @Override
        public void enter(Interval interval) {
            flowing = interval.middleS() < endS;
        }

        @Override
        public void contribute(double timeS, State state, Flows flows) {
            if (flowing) {
                for (int i = 1; i <= last; i++) {
                    flows.link(i, slab.chain().betweenWPerK(i), Flows.UNMETERED);
                }
                double film = 1 / (slab.filmWPerM2K() * slab.chain().outerAreaM2());
                flows.exchange(last, 1 / (slab.chain().outerHalfKPerW() + film), slab.fluidC(), Flows.UNMETERED);
            }
        }
    }
}
