package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Modes of networks as chance makes them, a junction without mass among their nodes. */
class ModesTest {
    private static final int JUNCTION = 3;
    private static final int NODES = 8;

    private static Network network(Random random) {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(new Network.Node("slurry", 4e6, -1, 35, false));
        assembly.node(new Network.Node("circuit", 2e4, 0, 50, false));
        assembly.node(new Network.Node("wall", 3e4 * (1 + random.nextDouble()), 0, 30, true));
        assembly.node(new Network.Node("headspace", 0, 0, 33, true));
        assembly.node(new Network.Node("wall", 5e3, 2, 20, true));
        assembly.node(new Network.Node("lid", 8e3, JUNCTION, 25, true));
        assembly.node(new Network.Node("dry wall", 9e3, JUNCTION, 24, true));
        assembly.node(new Network.Node("lid", 400 * random.nextDouble() + 1, 5, 10, true));
        return assembly.build();
    }

    private static double[] conductances(Random random) {
        double[] conductances = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            conductances[i] = 1 + 20 * random.nextDouble();
        }
        return conductances;
    }

    /** Heat into a node at temperatures of all, known temperatures being 0 °C. */
    private static double heatW(Network network, double[] link, double[] held, State state, int node) {
        double heat = -held[node] * state.nodeC(node);
        for (int i = 1; i < NODES; i++) {
            double intoParent = link[i] * (state.nodeC(i) - state.nodeC(network.parents()[i]));
            heat += i == node ? -intoParent : network.parents()[i] == node ? intoParent : 0;
        }
        return heat;
    }

    /** Temperatures gathered into modes and read back are the same; each mode's own decay makes every node's heat. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void modesHoldTheTemperaturesAndDecayAsTheNodesLoseHeat(long seed) {
        Random random = new Random(seed);
        Network network = network(random);
        double[] link = conductances(random);
        double[] held = conductances(random);
        Modes modes = new Modes(network, link, held);
        assertEquals(NODES - 1, modes.count());
        State state = network.initialState();
        double[] content = new double[modes.count()];
        modes.gather(state, content);
        state.setNodeC(JUNCTION, Sums.product(modes.shape(JUNCTION), content));
        assertEquals(0, heatW(network, link, held, state, JUNCTION), 1e-9, "nothing stays in the junction");
        Decays aSecond = modes.over(1e-3);
        for (int node = 0; node < NODES; node++) {
            assertEquals(state.nodeC(node), Sums.product(modes.shape(node), content), 1e-9);
            if (node != JUNCTION) {
                double changeK = 0;
                for (int mode = 0; mode < modes.count(); mode++) {
                    changeK += modes.shape(node)[mode] * content[mode] * (aSecond.left[Parabola.END][mode] - 1);
                }
                double expectedK = 1e-3 * heatW(network, link, held, state, node) / network.capacitiesJPerK()[node];
                // over a millisecond the fastest mode here decays by less than a thousandth
                assertEquals(expectedK, changeK, 1e-3 * Math.abs(expectedK) + 1e-9, "node " + node);
            }
        }
    }

    /** What reaches the slurry in the end of a heat elsewhere: all of it at the slurry, less the further out it is. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void lessOfAHeatReachesTheSlurryTheFurtherOutItIs(long seed) {
        Random random = new Random(seed);
        Network network = network(random);
        Modes modes = new Modes(network, conductances(random), conductances(random));
        assertEquals(1, modes.transfer(0), 1e-12);
        assertTrue(modes.transfer(2) < 1 && modes.transfer(2) > modes.transfer(4) && modes.transfer(4) > 0);
        assertTrue(modes.transfer(JUNCTION) > modes.transfer(5) && modes.transfer(5) > modes.transfer(7));
    }
}
