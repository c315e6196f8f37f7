package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Halving the fast engine's step shrinks its error, on bodies with chains of layers as chance makes them. */
class StepHalvingTest {

    private static final int NETWORKS = 40;
    private static final double SPAN_S = 6 * 3600;

    /** Every network gains at least this from a halved step: layers far quicker than the step lower the order. */
    private static final double LEAST_GAIN = 3;

    /** Taken together they gain nearly the factor of order 3, which is 8. */
    private static final double USUAL_GAIN = 6;

    /** Below this the coarse step is right by chance, errors of one sign and the other falling together, K. */
    private static final double BY_CHANCE_K = 1e-6;

    /** Heat of a sun that rises and sets over the span, a leaking chain of a few nodes, a sine of outside temperature. */
    private static Network network(long seed) {
        Random random = new Random(seed);
        Network.Assembly assembly = new Network.Assembly();
        int root = assembly.node(new Network.Node("slurry", 1e6 * (1 + 4 * random.nextDouble()), -1, 36, false));
        int chain = 2 + random.nextInt(4);
        double[] link = new double[chain];
        for (int i = 0; i < chain; i++) {
            double capacity = 2e4 * (1 + 4 * random.nextDouble());
            assembly.node(new Network.Node("layer", capacity, i == 0 ? root : i, 30 - 5 * i, false));
            link[i] = 2 + 8 * random.nextDouble();
        }
        double quadratic = 0.02 * random.nextDouble();
        assembly.part((timeS, state, flows) -> {
            double phase = 2 * Math.PI * timeS / SPAN_S;
            for (int i = 0; i < chain; i++) {
                flows.link(i + 1, link[i], -1);
            }
            double overAir = state.nodeC(chain) - 5;
            flows.heat(
                    chain,
                    -quadratic * overAir * Math.abs(overAir),
                    -2 * quadratic * Math.abs(overAir),
                    2 * quadratic,
                    -1);
            flows.exchange(chain, 3, 5 + 4 * Math.sin(phase), -1);
            flows.heat(root, 300 * (1 - Math.cos(phase)), -1);
        });
        return assembly.build();
    }

    private static double slurryC(long seed, int steps) {
        Network network = network(seed);
        State state = network.initialState();
        LiveStep step = new LiveStep(network, state, new SlowHeat());
        double stepS = SPAN_S / steps;
        step.begin(0, state);
        for (int i = 0; i < steps; i++) {
            step.attempt(i * stepS, stepS, state);
            state.set(step.result());
            step.advance();
        }
        return state.nodeC(0);
    }

    @Test
    void halvingTheStepShrinksTheError() {
        double logarithms = 0;
        int counted = 0;
        for (long seed = 1; seed <= NETWORKS; seed++) {
            double exact = slurryC(seed, 1536);
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
