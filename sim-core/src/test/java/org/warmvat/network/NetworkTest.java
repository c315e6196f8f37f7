package org.warmvat.network;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Putting a network together, and its state. */
class NetworkTest {

    private final Network.Assembly assembly = new Network.Assembly(1, 20);

    private static String refusal(Runnable adding) {
        return assertThrows(IllegalArgumentException.class, adding::run).getMessage();
    }

    @Test
    void nodesHaveTheCapacityOfTheirKind() {
        assertEquals(
                "node loop: heat capacity 0.0 J/K, expected a number above 0, or 0 for a room without mass or a known temperature",
                refusal(() -> assembly.body("loop", 0, 20)));
        assertThrows(IllegalArgumentException.class, () -> assembly.room("air", Double.NaN, 20));
        int known = assembly.known("air", 5);
        int headspace = assembly.room("headspace", 0, 20);
        int shelter = assembly.room("shelter", 4e5, 20);
        Network network = assembly.build();
        assertArrayEquals(new int[] {known}, network.nodes(Node.Kind.KNOWN));
        assertArrayEquals(new int[] {headspace, shelter}, network.nodes(Node.Kind.ROOM));
        assertArrayEquals(new double[] {1, 0, 0, 4e5}, network.capacitiesJPerK());
    }

    @Test
    void piecesJoinWhatMayBeJoined() {
        int air = assembly.known("air", 5);
        int water = assembly.body("water", 1, 20);
        int one = assembly.room("one", 0, 20);
        int other = assembly.room("other", 0, 20);
        assertEquals(
                "exchange: two rooms without mass may not touch", refusal(() -> assembly.exchange(one, other, 1, -1)));
        assertEquals(
                "exchange: node 1, expected one of kind [SLURRY, ROOM, CIRCUIT]",
                refusal(() -> assembly.exchange(air, water, 1, -1)));
        assertEquals(
                "source: node 9, expected one of kind [SLURRY, ROOM, CIRCUIT]", refusal(() -> assembly.source(9, -1)));
        Chain.Face face = new Chain.Face(0, 1, new Film(5), water, Network.UNMETERED);
        assertEquals(
                "wall: node 2, expected one of kind [KNOWN, ROOM]",
                refusal(() -> assembly.chain("wall", 0, new double[] {1}, new double[] {1}, face, 20)));
    }

    @Test
    void aMeterOfOneNameIsOneMeter() {
        int heat = assembly.meter("heat");
        int other = assembly.meter("other");
        assertEquals(heat, assembly.meter("heat"));
        assertEquals(List.of("heat", "other"), assembly.build().meters());
        assertEquals(1, other);
    }

    /** The earliest of all announced jumps counts; parts are asked in the order they came in. */
    @Test
    void partsAreAskedInOrder() {
        List<String> heard = new ArrayList<>();
        for (double every : new double[] {50, 20}) {
            assembly.part(new Part() {
                @Override
                public double nextJumpS(double timeS) {
                    return timeS + every;
                }

                @Override
                public void enter(Interval interval) {
                    heard.add("enter " + every + " at " + interval.middleS());
                }

                @Override
                public void ask(double timeS, State state) {
                    heard.add("ask " + every);
                }
            });
        }
        assembly.part(new Part() {});
        Network network = assembly.build();
        assertEquals(120, network.nextJumpS(100));
        network.enter(new Interval(100, 120, 0));
        network.ask(100, network.initialState());
        assertEquals(List.of("enter 50.0 at 110.0", "enter 20.0 at 110.0", "ask 50.0", "ask 20.0"), heard);
    }

    @Test
    void withoutSchedulesNothingJumps() {
        assembly.part(new Part() {});
        assertEquals(Double.POSITIVE_INFINITY, assembly.build().nextJumpS(0));
    }

    /** Starting takes all margins, stopping any; a gate shuts either way, and what must be off does not start. */
    @Test
    void aSwitchTakesAllToStartAndAnyToStop() {
        boolean[] open = {true, false};
        Switch pump = assembly.switchOf("pump")
                .startsWhen(state -> open[0], Margin.above(0, 10), Margin.below(0, 30))
                .stopsWhen(Gate.OPEN, Margin.above(0, 40), Margin.below(0, 5))
                .offWhile(state -> open[1]);
        State state = assembly.build().initialState();
        assertEquals(10, pump.margin(state));
        state.setNodeC(0, 33);
        assertEquals(-3, pump.margin(state));
        state.setOn(0, true);
        assertEquals(-7, pump.margin(state));
        state.setNodeC(0, 4);
        assertEquals(1, pump.margin(state));
        state.setNodeC(0, 20);
        open[1] = true;
        assertTrue(pump.margin(state) > 0);
        state.setOn(0, false);
        assertTrue(pump.margin(state) < 0);
        open[1] = false;
        open[0] = false;
        assertTrue(pump.margin(state) < 0);
    }

    @Test
    void anExchangeOpensOverItsRamp() {
        int room = assembly.room("tunnel", 1e5, 20);
        Exchange exchange =
                assembly.exchange(room, assembly.known("air", 20), 10, -1, new Exchange.Opening(30, 5, 210));
        assertEquals(10, exchange.wPerK(30, 20));
        assertEquals(110, exchange.wPerK(32.5, 20));
        assertEquals(210, exchange.wPerK(50, 20));
        assertEquals(10, exchange.wPerK(32, 33));
        exchange.set(300);
        assertEquals(300, exchange.wPerK(50, 20));
    }

    @Test
    void statesAreCopiedWhole() {
        assembly.stock("solids", 3);
        assembly.switchOf("pump");
        Network network = assembly.build();
        State state = network.initialState();
        assertFalse(state.isOn(0));
        State copy = state.copy();
        state.setNodeC(0, 31);
        state.setStock(0, 4);
        state.setOn(0, true);
        assertEquals(20, copy.nodeC(0));
        assertEquals(3, copy.stock(0));
        assertFalse(copy.isOn(0));
        copy.set(state);
        assertEquals(31, copy.nodeC(0));
        assertEquals(4, copy.stock(0));
        assertTrue(copy.isOn(0));
    }
}
