package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.warmvat.network.Chain;
import org.warmvat.network.Circuit;
import org.warmvat.network.Exchange;
import org.warmvat.network.Film;
import org.warmvat.network.Gate;
import org.warmvat.network.Interval;
import org.warmvat.network.Margin;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;
import org.warmvat.network.State;
import org.warmvat.network.Stock;
import org.warmvat.network.Switch;

/** Two bodies, junctions without mass and stocks against their closed forms, on both engines. */
class CoupledBodiesTest {

    /** The node of the second body where there are two: after the slurry and the cold that it loses heat to. */
    private static final int SHELL = 2;

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
                    end.nodeC(SHELL),
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
        assertEquals(40.31886, end.nodeC(SHELL), Math.max(5e-6, 3 * engine.withinK()));
        assertEquals(1e6 * 60 + 4e5 * 10, 1e6 * end.nodeC(0) + 4e5 * end.nodeC(SHELL), 1e-9 * 6.4e7);
    }

    /**
     * A store that a thermostat heats through its own water, and a shell of a tenth of its capacity that follows slowly: what one side
     * gives the other receives, switchings or not, so that heat in, heat lost and heat stored close to a hundred millionth; and a
     * stock that is fed evenly counts the seconds.
     */
    @ParameterizedTest
    @EnumSource
    void whatIsSlowAndWhatIsSwitchedKeepOneAccount(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(4e5, 35);
        int store = Network.SLURRY;
        int cold = assembly.known("cold", 0);
        int frost = assembly.known("frost", -5);
        int heat = assembly.meter("heat");
        int loss = assembly.meter("loss");
        int call = assembly.switchOf("call")
                .startsWhen(Gate.OPEN, Margin.below(store, 34.5))
                .stopsWhen(Gate.OPEN, Margin.above(store, 36))
                .number();
        int pump = assembly.switchOf("pump")
                .startsWhen(Gate.OPEN, Margin.above(store, 0))
                .number();
        int water = assembly.body("water", 2e4, 35);
        assembly.circuit(water, new Circuit.Coil(pump, Network.UNMETERED), Circuit.Quadratic.NONE, Circuit.Heater.NONE)
                .setCoil(90);
        assembly.source(water, heat, state -> state.isOn(call)).set(900);
        Chain.Face face = new Chain.Face(0, 1, new Film(6), frost, loss);
        int shell = assembly.chain("shell", store, new double[] {4e4}, new double[] {40}, face, 20)
                .first();
        assembly.exchange(store, cold, 1, loss);
        Stock seconds = assembly.stock("seconds", 0);
        seconds.set(1, 0, 0);
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
        assertEquals(48 * 3600, end.stock(seconds.number()), 1e-6);
    }

    private static Network two(double a, double b, double linkWPerK, double lossWPerK, double firstC, double secondC) {
        Network.Assembly assembly = new Network.Assembly(a, firstC);
        int cold = assembly.known("cold", 0);
        // a conductance of nothing is no film: 1e-12 W/K are as good
        Chain.Face face = new Chain.Face(0, 1, new Film(Math.max(lossWPerK, 1e-12)), cold, Network.UNMETERED);
        int shell = assembly.chain("shell", 0, new double[] {b}, new double[] {linkWPerK}, face, secondC)
                .first();
        assertEquals(SHELL, shell);
        return assembly.build();
    }

    /** A headspace without mass between surface, lid and dry wall: three conductances in a star, added by hand. */
    @ParameterizedTest
    @EnumSource
    void aJunctionWithoutMassPassesWhatItReceives(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(1e6, 36);
        int headspace = assembly.room("headspace", 0, 36);
        assembly.exchange(headspace, Network.SLURRY, 8, Network.UNMETERED);
        assembly.exchange(headspace, assembly.known("cold", 0), 2, Network.UNMETERED);
        assembly.exchange(headspace, assembly.known("mild", 10), 6, Network.UNMETERED);
        // headspace = (8 T + 60)/16, so the slurry sees 4 W/K against 7.5 °C
        State end = engine.run(assembly.build(), 24);
        double expected = 7.5 + 28.5 * Math.exp(-4 * 24 * 3600.0 / 1e6);
        assertEquals(expected, end.nodeC(0), engine.withinK());
        assertEquals((8 * end.nodeC(0) + 60) / 16, end.nodeC(headspace), engine == Engines.REFERENCE ? 1e-9 : 1e-3);
    }

    /**
     * A shelter's air of 1e5 J/K that a store of 1e6 J/K warms through 20 W/K and that loses 100 W/K to 0 °C: two capacities again, the
     * second outside of all chains, roots of the 2 x 2 matrix.
     */
    @ParameterizedTest
    @EnumSource
    void aRoomWithMassIsACapacityLikeAnyOther(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(1e6, 36);
        int room = assembly.room("shelter", 1e5, 0);
        assembly.exchange(Network.SLURRY, room, 20, Network.UNMETERED);
        int lost = assembly.meter("lost");
        assembly.exchange(room, assembly.known("cold", 0), 100, lost);
        double trace = -20 / 1e6 - 120 / 1e5;
        double root = Math.sqrt(trace * trace / 4 - 20 * 100 / 1e11);
        double slow = trace / 2 + root;
        double fast = trace / 2 - root;
        double slowRoom = 1 + 1e6 * slow / 20;
        double fastRoom = 1 + 1e6 * fast / 20;
        double slowWeight = 36 * fastRoom / (fastRoom - slowRoom);
        double[] joules = new double[1];
        State end = engine.run(assembly.build(), 12, hour -> {
            joules[0] += hour.meter(lost);
            return true;
        });
        double s = slowWeight * Math.exp(slow * 12 * 3600);
        double f = (36 - slowWeight) * Math.exp(fast * 12 * 3600);
        assertEquals(s + f, end.nodeC(0), engine == Engines.REFERENCE ? 1e-6 : 1e-3);
        assertEquals(slowRoom * s + fastRoom * f, end.nodeC(room), engine == Engines.REFERENCE ? 1e-6 : 1e-3);
        assertEquals(1e6 * (end.nodeC(0) - 36) + 1e5 * end.nodeC(room), joules[0], 1e-7 * 3.6e7);
    }

    /** A tunnel in the sun that is opened: it settles where 3000 W = (10 + 40 (T - 30)) (T - 20), opened to 40 K/5 K of the way. */
    @ParameterizedTest
    @EnumSource
    void anExchangeThatOpensHoldsARoomNearItsThreshold(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(1e15, 36);
        int room = assembly.room("tunnel", 2e5, 20);
        int sun = assembly.meter("sun");
        int air = assembly.meter("air");
        assembly.source(room, sun).set(3000);
        assembly.exchange(room, assembly.known("air", 20), 10, air, new Exchange.Opening(30, 5, 210));
        double[] counted = new double[2];
        double[] firstC = new double[1];
        State end = engine.run(assembly.build(), 10, hour -> {
            counted[0] += hour.meter(sun);
            counted[1] += hour.meter(air);
            firstC[0] = hour.hour() == 0 ? hour.state().nodeC(room) : firstC[0];
            return true;
        });
        // 40 x^2 + 10 x = 3000 + ... with x = T - 30: (10 + 40 x)(10 + x) = 3000
        double x = (-410 + Math.sqrt(410 * 410 + 4 * 40 * 2900)) / 80;
        assertEquals(30 + x, end.nodeC(room), 1e-6);
        // shut when the first hour begins, open from its twelfth minute on, and settled within five minutes' time
        // constant
        assertEquals(30 + x, firstC[0], 1e-3);
        assertEquals(3000 * 36_000, counted[0], 1e-3);
        assertEquals(2e5 * (end.nodeC(room) - 20), counted[0] + counted[1], 1e-8 * 3000 * 36_000);
    }

    /**
     * A circuit whose loss follows the wind, from 10 to 30 W/K over every hour: {@code T = T_0 exp(-20 W/K t/C)} at the ends of hours,
     * here 50 °C by a mean of 72 kJ/K an hour over 144 kJ/K.
     */
    @ParameterizedTest
    @EnumSource
    void aLossThatFollowsTheWindTakesItsMean(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(1e6, 0);
        int water = assembly.body("water", 1.44e5, 50);
        int pump = assembly.switchOf("pump").number();
        assembly.circuit(water, new Circuit.Coil(pump, Network.UNMETERED), Circuit.Quadratic.NONE, Circuit.Heater.NONE);
        Exchange loss = assembly.exchange(water, assembly.known("cold", 0), 0, Network.UNMETERED);
        assembly.part(new Part() {
            @Override
            public void look(double timeS, State state) {
                double hours = timeS / 3600;
                loss.set(10 + 20 * (hours - Math.min(3, Math.floor(hours))));
            }
        });
        State end = engine.run(assembly.build(), 4);
        assertEquals(50 * Math.exp(-2), end.nodeC(water), 1e-6);
    }

    /**
     * A holder of 1.5 that starts half full, gains 0.5 an hour and feeds a use of 2 an hour from its second hour on: full after an hour
     * and a half it overflows, would be empty an hour later, and the use stops there until a twentieth has come.
     */
    @ParameterizedTest
    @EnumSource
    void aHolderFillsOverflowsAndRunsEmpty(Engines engine) {
        Network.Assembly assembly = new Network.Assembly(1e6, 36);
        boolean[] wanted = new boolean[1];
        int made = assembly.meter("made");
        int used = assembly.meter("used");
        int surplus = assembly.meter("surplus");
        Stock holder = assembly.stock("holder", 0.75).fedBy(made, 1).fedBy(used, -1);
        assembly.bounded(holder, 1.5, 100, surplus);
        Switch empty = assembly.switchOf("empty")
                .startsWhen(Gate.OPEN, Margin.ofStock(holder, 0, -100))
                .stopsWhen(Gate.OPEN, Margin.ofStock(holder, 0.075, 100));
        assembly.source(Network.NOWHERE, made).set(0.5 / 3600);
        assembly.source(Network.NOWHERE, used, state -> wanted[0] && !state.isOn(empty.number()))
                .set(2.0 / 3600);
        assembly.part(new Part() {
            @Override
            public void enter(Interval interval) {
                wanted[0] = interval.hour() >= 2;
            }
        });
        double[][] hourly = new double[6][3];
        int[] empties = new int[1];
        State end = engine.run(assembly.build(), 6, hour -> {
            hourly[hour.hour()] = new double[] {
                hour.meter(used), hour.meter(surplus), hour.state().stock(0)
            };
            empties[0] += hour.starts(empty.number());
            return true;
        });
        assertEquals(1.25, hourly[0][2], 1e-9);
        assertEquals(0.25, hourly[1][1], 1e-8);
        assertEquals(1.5, hourly[1][2], 1e-8);
        // an hour down from 1.5 by 1.5 an hour
        assertEquals(2, hourly[2][0], 1e-7);
        // then 9 minutes to a twentieth, 3 minutes down again: five times an hour
        assertEquals(0.5, hourly[3][0], 1e-7);
        assertEquals(0, hourly[3][1]);
        assertEquals(16, empties[0], 1);
        assertTrue(end.stock(0) >= -1e-9 && end.stock(0) <= 0.075 + 1e-9);
    }

    /** A stock with constant gain and loss: {@code S = S_inf + (S_0 - S_inf) exp(-loss t)}. */
    @ParameterizedTest
    @EnumSource
    void aStockFillsTowardsGainOverLoss(Engines engine) {
        Body body = new Body(Body.CUBIC_METRE_J_PER_K, 36);
        Stock solids = body.assembly.stock("solids", 2);
        double loss = 1.0 / (20 * 86_400);
        solids.set(10 * loss, loss, 0);
        int made = body.assembly.meter("made");
        Source making = body.assembly.source(Network.NOWHERE, made);
        body.assembly.part(new Part() {
            @Override
            public void ask(double timeS, State state) {
                making.set(state.stock(solids.number()));
            }
        });
        double[] integral = new double[1];
        State end = engine.run(body.build(), 240, hour -> {
            integral[0] += hour.meter(made);
            return true;
        });
        double share = Math.exp(-0.5);
        assertEquals(10 - 8 * share, end.stock(solids.number()), 1e-6);
        // the integral of S is what came in less what stays, over the loss
        // (the fast engine reads the stock as it was asked at: some 1e-6 on these long steps)
        assertEquals((10 * 0.5 + 2 - end.stock(solids.number())) / loss, integral[0], 1e-5 * integral[0]);
        // the fast engine keeps temperatures as sums over modes
        assertEquals(36, end.nodeC(0), 1e-9);
    }
}
