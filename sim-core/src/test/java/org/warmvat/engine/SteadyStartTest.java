package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Chain;
import org.warmvat.network.Film;
import org.warmvat.network.Network;
import org.warmvat.network.Node;
import org.warmvat.network.State;

/** The envelope in equilibrium at the first instant. */
class SteadyStartTest {

    /** Slurry 36 °C - 2 W/K - inner - 1 W/K - outer - 4 W/K - 0 °C, and a branch through a room without mass. */
    private static Network chain(double[] seenS) {
        Network.Assembly assembly = new Network.Assembly(1e6, 36);
        int cold = Body.known(assembly, "cold", timeS -> {
            seenS[0] = timeS;
            return 0;
        });
        int mild = assembly.known("mild", 20);
        assembly.body("collector", 3e4, 55);
        int headspace = assembly.room("headspace", 0, 20);
        assembly.exchange(headspace, Network.SLURRY, 3, Network.UNMETERED);
        assembly.chain("wall", 0, new double[] {1e4, 2e4}, new double[] {2, 1}, face(4, cold), 20);
        assembly.chain("lid", headspace, new double[] {3e4}, new double[] {6}, face(3, mild), 20);
        return assembly.build();
    }

    /** A face of a square metre without any resistance before its film. */
    private static Chain.Face face(double filmWPerK, int outside) {
        return new Chain.Face(0, 1, new Film(filmWPerK), outside, Network.UNMETERED);
    }

    @Test
    void everyNodeOfTheEnvelopeStandsWhereHeatPassesThrough() {
        double[] seen = new double[1];
        Network network = chain(seen);
        State state = network.initialState();
        SteadyStart.settle(network, state, 7);
        assertEquals(7 * 3600.0, seen[0]);
        int wall = network.chains().get(0).first();
        // 36 K over 1/2 + 1 + 1/4 K/W
        double watts = 36 / 1.75;
        assertEquals(36, state.nodeC(0));
        assertEquals(36 - watts / 2, state.nodeC(wall), 1e-12);
        assertEquals(watts / 4, state.nodeC(wall + 1), 1e-12);
        // the lid sees 3 W/K against 20 °C: 16 K over 1/3 + 1/6 + 1/3 K/W
        double lidWatts = 16 / (5.0 / 6);
        assertEquals(36 - lidWatts / 3, state.nodeC(network.nodes(Node.Kind.ROOM)[0]), 1e-12);
        assertEquals(20 + lidWatts / 3, state.nodeC(network.chains().get(1).first()), 1e-12);
        assertEquals(55, state.nodeC(network.nodes(Node.Kind.CIRCUIT)[0]));
    }

    /** Held at 36 °C, a settled envelope does not move: its rates are nil, so hours later it stands where it stood. */
    @ParameterizedTest
    @EnumSource
    void aSettledEnvelopeStaysSettled(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(1e15, 36);
        int cold = assembly.known("cold", 0);
        Chain shell = assembly.chain("shell", 0, new double[] {1e4}, new double[] {7}, face(2, cold), 0);
        Network network = assembly.build();
        State state = network.initialState();
        SteadyStart.settle(network, state, 0);
        assertEquals(28, state.nodeC(shell.first()), 1e-12);
        engine.engine().run(network, state, new Hours(0, 10), HourSink.IGNORE);
        assertEquals(28, state.nodeC(shell.first()), 1e-8);
    }
}
