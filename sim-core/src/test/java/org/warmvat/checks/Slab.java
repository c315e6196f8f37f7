package org.warmvat.checks;

import org.warmvat.envelope.LayerChain;
import org.warmvat.network.Chain;
import org.warmvat.network.Film;
import org.warmvat.network.Network;
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
        int count = chain.slices().size();
        double[] capacity = new double[count - 1];
        double[] link = new double[count - 1];
        for (int i = 1; i < count; i++) {
            capacity[i - 1] = chain.slices().get(i).capacityJPerK();
            link[i - 1] = chain.betweenWPerK(i);
        }
        Network.Assembly assembly = new Network.Assembly(chain.slices().get(0).capacityJPerK(), startC);
        Chain.Face face = new Chain.Face(
                chain.outerHalfKPerW(),
                chain.outerAreaM2(),
                new Film(filmWPerM2K),
                assembly.known("fluid", fluidC),
                Network.UNMETERED);
        int first = assembly.chain("layer", Network.SLURRY, capacity, link, face, startC)
                .first();
        State then = Moment.of(seconds, assembly);
        double[] celsius = new double[count];
        celsius[0] = then.nodeC(Network.SLURRY);
        for (int i = 1; i < count; i++) {
            celsius[i] = then.nodeC(first + i - 1);
        }
        return celsius;
    }

    /** Temperature of the outer face, where film and last half layer meet, °C. */
    double outerFaceC(double lastC) {
        double film = 1 / (filmWPerM2K * chain.outerAreaM2());
        return (lastC * film + fluidC * chain.outerHalfKPerW()) / (film + chain.outerHalfKPerW());
    }
}
