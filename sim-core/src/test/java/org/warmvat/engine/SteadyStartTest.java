package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** The envelope in equilibrium at the first instant. */
class SteadyStartTest {

    /** Slurry 36 °C - 2 W/K - inner - 1 W/K - outer - 4 W/K - 0 °C, and a branch through a junction without mass. */
    private static Network chain(double[] seenC) {
        Network.Assembly assembly = new Network.Assembly();
        int slurry = assembly.node(new Network.Node("slurry", 1e6, -1, 36, false));
        int collector = assembly.node(new Network.Node("collector", 3e4, slurry, 55, false));
        int inner = assembly.node(new Network.Node("inner", 1e4, slurry, 20, true, 2));
        int outer = assembly.node(new Network.Node("outer", 2e4, inner, 20, true, 1));
        int headspace = assembly.node(new Network.Node("headspace", 0, slurry, 20, true, 3));
        int lid = assembly.node(new Network.Node("lid", 3e4, headspace, 20, true, 6));
        assembly.slowPart((timeS, flows) -> {
            seenC[0] = timeS;
            flows.exchange(outer, 4, 0, Flows.UNMETERED);
            flows.exchange(lid, 2, 10, Flows.UNMETERED);
            flows.exchange(lid, 1, 40, Flows.UNMETERED);
        });
        assembly.part((timeS, state, flows) -> flows.exchange(collector, 5, 0, Flows.UNMETERED));
        return assembly.build();
    }

    @Test
    void everyNodeOfTheEnvelopeStandsWhereHeatPassesThrough() {
        double[] seen = new double[1];
        Network network = chain(seen);
        State state = network.initialState();
        SteadyStart.settle(network, state, 7);
        assertEquals(7 * 3600.0, seen[0]);
        // 36 K over 1/2 + 1 + 1/4 K/W
        double watts = 36 / 1.75;
        assertEquals(36, state.nodeC(0));
        assertEquals(36 - watts / 2, state.nodeC(2), 1e-12);
        assertEquals(watts / 4, state.nodeC(3), 1e-12);
        // the lid sees 3 W/K against 20 °C: 16 K over 1/3 + 1/6 + 1/3 K/W
        double lidWatts = 16 / (5.0 / 6);
        assertEquals(36 - lidWatts / 3, state.nodeC(4), 1e-12);
        assertEquals(20 + lidWatts / 3, state.nodeC(5), 1e-12);
        assertEquals(55, state.nodeC(1));
    }

    /** Held at 36 °C, a settled envelope does not move: its rates are nil, so hours later it stands where it stood. */
    @ParameterizedTest
    @EnumSource
    void aSettledEnvelopeStaysSettled(Engines engine) {
        Network.Assembly assembly = new Network.Assembly();
        int slurry = assembly.node(new Network.Node("slurry", 1e15, -1, 36, false));
        int shell = assembly.node(new Network.Node("shell", 1e4, slurry, 0, true, 7));
        assembly.slowPart((timeS, flows) -> flows.exchange(shell, 2, 0, Flows.UNMETERED));
        Network network = assembly.build();
        State state = network.initialState();
        SteadyStart.settle(network, state, 0);
        assertEquals(28, state.nodeC(shell), 1e-12);
        engine.engine().run(network, state, new Hours(0, 10), HourSink.IGNORE);
        assertEquals(28, state.nodeC(shell), 1e-8);
    }
}
