package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/** Two bodies, junctions without mass and stocks against their closed forms, on both engines. */
class CoupledBodiesTest {

    /**
     * Two capacities: 4.18e6 and 2e5 J/K, 200 W/K between them, 12 W/K from the small one to 0 °C. Time constants 0.25132587 h and
     * 106.94311858 h, the roots of the 2 x 2 matrix; the state is the sum of both modes.
     */
    @ParameterizedTest
    @EnumSource
    void twoCapacitiesShowBothTimeConstants(Engines engine) {
        double a = 4.18e6;
        double b = 2e5;
        double trace = -200 / a - 212 / b;
        double determinant = 200.0 * 12 / (a * b);
        double root = Math.sqrt(trace * trace / 4 - determinant);
        double slow = trace / 2 + root;
        double fast = trace / 2 - root;
        assertEquals(106.94311858, -1 / slow / 3600, 1e-8);
        assertEquals(0.25132587, -1 / fast / 3600, 1e-8);
        Network network = two(a, b, 200, 12, 37, 10);
        // eigenvectors (1, 1 + a r/200); weights from the initial state
        double slowShell = 1 + a * slow / 200;
        double fastShell = 1 + a * fast / 200;
        double fastWeight = (10 - 37 * slowShell) / (fastShell - slowShell);
        double slowWeight = 37 - fastWeight;
        for (int hours : new int[] {1, 24}) {
            State end = engine.run(network, hours);
            double s = Math.exp(slow * 3600 * hours);
            double f = Math.exp(fast * 3600 * hours);
            assertEquals(slowWeight * s + fastWeight * f, end.nodeC(0), engine.withinK());
            assertEquals(
                    slowWeight * slowShell * s + fastWeight * fastShell * f,
                    end.nodeC(1),
                    engine == Engines.REFERENCE ? 1e-6 : 0.01);
        }
    }

    /** Two bodies that only meet each other: 60 and 10 °C end at 47.87245 and 40.31886 °C; no heat is lost. */
    @ParameterizedTest
    @EnumSource
    void aClosedPairKeepsItsHeat(Engines engine) {
        // both capacities and the time doubled: the same exponent as 5e5, 2e5 J/K, 150 W/K, 1800 s
        Network network = two(1e6, 4e5, 150, 0, 60, 10);
        State end = engine.run(network, 1);
        assertEquals(47.87245, end.nodeC(0), Math.max(5e-6, engine.withinK()));
        assertEquals(40.31886, end.nodeC(1), Math.max(5e-6, 3 * engine.withinK()));
        assertEquals(1e6 * 60 + 4e5 * 10, 1e6 * end.nodeC(0) + 4e5 * end.nodeC(1), 1e-9 * 6.4e7);
    }

    /**
     * A store that a thermostat heats through its own water, and a shell of a tenth of its capacity that follows slowly: what one side
     * gives the other receives, switchings or not, so that heat in, heat lost and heat stored close to a hundred millionth; and a
     * stock that is fed evenly counts the seconds.
     */
    @ParameterizedTest
    @EnumSource
    void whatIsSlowAndWhatIsSwitchedKeepOneAccount(Engines engine) {
        Network.Assembly assembly = new Network.Assembly();
        int store = assembly.node(new Network.Node("store", 4e5, -1, 35, false));
        int water = assembly.node(new Network.Node("water", 2e4, store, 35, false));
        int shell = assembly.node(new Network.Node("shell", 4e4, store, 20, true, 40));
        int heat = assembly.meter("heat");
        int loss = assembly.meter("loss");
        int call = assembly.switchOf(
                "call", (timeS, state, on) -> on ? state.nodeC(store) - 36 : 34.5 - state.nodeC(store));
        int seconds = assembly.stock(new Network.Stock("seconds", 0));
        assembly.part((timeS, state, flows) -> {
            flows.stock(seconds, 1, 0);
            flows.link(water, 90, Flows.UNMETERED);
            if (state.isOn(call)) {
                flows.heat(water, 900, heat);
            }
        });
        assembly.slowPart((timeS, flows) -> {
            flows.exchange(shell, 6, -5, loss);
            flows.exchange(store, 1, 0, loss);
        });
        double[] flowed = new double[3];
        State end = engine.run(assembly.build(), 48, hour -> {
            flowed[0] += hour.meter(heat);
            flowed[1] += hour.meter(loss);
            flowed[2] += hour.starts(call);
            return true;
        });
        double stored = 4e5 * (end.nodeC(store) - 35) + 2e4 * (end.nodeC(water) - 35) + 4e4 * (end.nodeC(shell) - 20);
        assertEquals(stored, flowed[0] + flowed[1], 1e-8 * flowed[0]);
        // 1.5 K of 4.5e5 J/K up by 656 W and down by 244 W: 45 strokes in two days, fewer since the water lags
        assertEquals(40, flowed[2], 6);
        assertEquals(35, end.nodeC(store), 1.5);
        assertEquals(48 * 3600, end.stock(seconds), 1e-6);
    }

    private static Network two(double a, double b, double linkWPerK, double lossWPerK, double firstC, double secondC) {
        Network.Assembly assembly = new Network.Assembly();
        int root = assembly.node(new Network.Node("store", a, -1, firstC, false));
        int shell = assembly.node(new Network.Node("shell", b, root, secondC, false));
        assembly.part((timeS, state, flows) -> {
            flows.link(shell, linkWPerK, assembly.meter("link"));
            flows.exchange(shell, lossWPerK, 0, assembly.meter("loss"));
        });
        assembly.meter("link");
        assembly.meter("loss");
        return assembly.build();
    }

    /** A headspace without mass between surface, lid and dry wall: three conductances in a star, added by hand. */
    @ParameterizedTest
    @EnumSource
    void aJunctionWithoutMassPassesWhatItReceives(Engines engine) {
        Network.Assembly assembly = new Network.Assembly();
        int slurry = assembly.node(new Network.Node("slurry", 1e6, -1, 36, false));
        int headspace = assembly.node(new Network.Node("headspace", 0, slurry, 36, true, 8));
        assembly.slowPart((timeS, flows) -> {
            flows.exchange(headspace, 2, 0, Flows.UNMETERED);
            flows.exchange(headspace, 6, 10, Flows.UNMETERED);
        });
        // headspace = (8 T + 60)/16, so the slurry sees 4 W/K against 7.5 °C
        State end = engine.run(assembly.build(), 24);
        double expected = 7.5 + 28.5 * Math.exp(-4 * 24 * 3600.0 / 1e6);
        assertEquals(expected, end.nodeC(slurry), engine.withinK());
        assertEquals((8 * end.nodeC(slurry) + 60) / 16, end.nodeC(headspace), 1e-9);
    }

    /** A stock with constant gain and loss: {@code S = S_inf + (S_0 - S_inf) exp(-loss t)}. */
    @ParameterizedTest
    @EnumSource
    void aStockFillsTowardsGainOverLoss(Engines engine) {
        Body body = new Body(Body.CUBIC_METRE_J_PER_K, 36);
        int solids = body.assembly.stock(new Network.Stock("solids", 2));
        double loss = 1.0 / (20 * 86_400);
        int made = body.assembly.meter("made");
        body.assembly.part((timeS, state, flows) -> {
            flows.stock(solids, 10 * loss, 0.25 * loss);
            flows.stock(solids, 0, 0.75 * loss);
            flows.meter(made, state.stock(solids));
        });
        double[] integral = new double[1];
        State end = engine.run(body.build(), 240, hour -> {
            integral[0] += hour.meter(made);
            return true;
        });
        double share = Math.exp(-0.5);
        assertEquals(10 - 8 * share, end.stock(solids), 1e-6);
        // the integral of S is what came in less what stays, over the loss
        // (the fast engine reads the stock as it was asked at: some 1e-6 on these long steps)
        assertEquals((10 * 0.5 + 2 - end.stock(solids)) / loss, integral[0], 1e-5 * integral[0]);
        // the fast engine keeps temperatures as sums over modes
        assertEquals(36, end.nodeC(0), 1e-9);
    }
}
