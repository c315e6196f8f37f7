package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * Halving the fast engine's step shrinks its error, on bodies with circuits and chains of layers as chance makes them. What the
 * modes hold is exact in any step; what is left over follows a parabola with the fifth order of its quadrature.
 */
class StepHalvingTest {

    private static final int NETWORKS = 40;
    private static final double SPAN_S = 6 * 3600;

    /** Every network gains at least this from a halved step, also where the coarse step happens to be right in part. */
    private static final double LEAST_GAIN = 12;

    /** Taken together they gain at least the factor of order 5, which is 32. */
    private static final double USUAL_GAIN = 32;

    /** Below this the coarse step is right by chance, errors of one sign and the other falling together, K. */
    private static final double BY_CHANCE_K = 1e-6;

    /** Heat of a sun that rises and sets over the span, a lossy circuit, a leaking chain in a wind and air that come and go. */
    private static Network network(long seed) {
        Random random = new Random(seed);
        Network.Assembly assembly = new Network.Assembly();
        int root = assembly.node(new Network.Node("slurry", 1e6 * (1 + 4 * random.nextDouble()), -1, 36, false));
        int circuit = assembly.node(new Network.Node("circuit", 4e4 * (1 + random.nextDouble()), root, 36, false));
        int chain = 2 + random.nextInt(4);
        for (int i = 0; i < chain; i++) {
            double capacity = 2e4 * (1 + 4 * random.nextDouble());
            int parent = i == 0 ? root : circuit + i;
            double link = 2 + 8 * random.nextDouble();
            assembly.node(new Network.Node("layer", capacity, parent, 30 - 5 * i, true, link));
        }
        double quadratic = 0.05 * random.nextDouble();
        double coil = 10 + 40 * random.nextDouble();
        assembly.part((timeS, state, flows) -> {
            double overAir = state.nodeC(circuit) - 5;
            flows.link(circuit, coil, Flows.UNMETERED);
            flows.heat(circuit, 500 * (1 - Math.cos(2 * Math.PI * timeS / SPAN_S)), Flows.UNMETERED);
            flows.heat(
                    circuit,
                    -quadratic * overAir * Math.abs(overAir),
                    -2 * quadratic * Math.abs(overAir),
                    2 * quadratic,
                    Flows.UNMETERED);
        });
        assembly.slowPart((timeS, flows) -> {
            double phase = 2 * Math.PI * timeS / SPAN_S;
            flows.exchange(circuit + chain, 3 + Math.sin(2 * phase), 5 + 4 * Math.sin(phase), Flows.UNMETERED);
        });
        return assembly.build();
    }

    private static double slurryC(long seed, int steps) {
        Network network = network(seed);
        State state = network.initialState();
        int last = network.nodes().size() - 1;
        ModalStep step = new ModalStep(network, new Switchboard(network), state, new int[] {0, 1, last});
        double stepS = SPAN_S / steps;
        step.begin(new ModeShelf(network).suiting(step.ask(0, state)));
        for (int i = 0; i < steps; i++) {
            step.attempt(i * stepS, stepS);
            step.advance();
        }
        return step.start().nodeC(0);
    }

    @Test
    void halvingTheStepShrinksTheError() {
        double logarithms = 0;
        int counted = 0;
        for (long seed = 1; seed <= NETWORKS; seed++) {
            double exact = slurryC(seed, 384);
            double coarse = Math.abs(slurryC(seed, 6) - exact);
            double fine = Math.abs(slurryC(seed, 12) - exact);
            if (coarse > BY_CHANCE_K) {
                assertTrue(coarse > LEAST_GAIN * fine, "network " + seed + ": " + coarse + " K against " + fine + " K");
                logarithms += Math.log(coarse / fine);
                counted++;
            }
        }
        assertTrue(counted >= 0.9 * NETWORKS, "counted " + counted);
        double usual = Math.exp(logarithms / counted);
        assertTrue(usual > USUAL_GAIN, "usual gain " + usual);
    }
}
