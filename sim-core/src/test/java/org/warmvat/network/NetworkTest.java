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

    private static Network.Node node(String name, double capacity, int parent) {
        return new Network.Node(name, capacity, parent, 20, false);
    }

    private static Network.Node steady(String name, double capacity, int parent) {
        return new Network.Node(name, capacity, parent, 20, true);
    }

    private static String refusal(Network.Assembly assembly, Network.Node node) {
        return assertThrows(IllegalArgumentException.class, () -> assembly.node(node))
                .getMessage();
    }

    @Test
    void nodesFormATreeFromTheFirst() {
        Network.Assembly assembly = new Network.Assembly();
        assertEquals(
                "node lid: parent 0, expected one of the 0 nodes before it, -1 for the first",
                refusal(assembly, node("lid", 1, 0)));
        assertEquals(0, assembly.node(node("slurry", 1, -1)));
        assertEquals(
                "node second root: parent -1, expected one of the 1 nodes before it, -1 for the first",
                refusal(assembly, node("second root", 1, -1)));
        assertEquals(
                "node orphan: parent 4, expected one of the 1 nodes before it, -1 for the first",
                refusal(assembly, node("orphan", 1, 4)));
        assertEquals("node void: a junction without mass starts steady", refusal(assembly, node("void", 0, 0)));
        assertEquals(1, assembly.node(steady("headspace", 0, 0)));
        assertEquals("node void: two junctions without mass may not touch", refusal(assembly, steady("void", 0, 1)));
        assertEquals(2, assembly.node(steady("lid", 5, 1)));
        Network network = assembly.build();
        assertArrayEquals(new int[] {-1, 0, 1}, network.parents());
        assertArrayEquals(new double[] {1, 0, 5}, network.capacitiesJPerK());
    }

    /** Slurry and circuits first, then the layers, which hang on the slurry or on each other. */
    @Test
    void liveNodesComeBeforeSteadyOnes() {
        Network.Assembly assembly = new Network.Assembly();
        assertEquals(
                "node lid: a steady node hangs on the first node or on a steady one",
                refusal(assembly, steady("lid", 1, -1)));
        assembly.node(node("slurry", 1, -1));
        int collector = assembly.node(node("collector", 1, 0));
        assertEquals(
                "node pipe: a steady node hangs on the first node or on a steady one",
                refusal(assembly, steady("pipe", 1, collector)));
        int wall = assembly.node(steady("wall", 1, 0));
        assembly.node(steady("foam", 1, wall));
        assertEquals("node late: live nodes come before steady ones", refusal(assembly, node("late", 1, 0)));
        assertEquals(2, assembly.build().liveNodes());
    }

    @Test
    void aMeterOfOneNameIsOneMeter() {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(node("slurry", 1, -1));
        int heat = assembly.meter("heat");
        int other = assembly.meter("other");
        assertEquals(heat, assembly.meter("heat"));
        assertEquals(List.of("heat", "other"), assembly.build().meters());
        assertEquals(1, other);
    }

    /** The earliest of all announced jumps counts; parts hear of intervals and contribute in the order they came in. */
    @Test
    void partsAreAskedInOrder() {
        List<String> heard = new ArrayList<>();
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(node("slurry", 1, -1));
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
                public void contribute(double timeS, State state, Flows flows) {
                    heard.add("contribute " + every);
                }
            });
        }
        assembly.part((timeS, state, flows) -> heard.add("plain"));
        assembly.slowPart((timeS, flows) -> heard.add("slow"));
        Network network = assembly.build();
        assertEquals(120, network.nextJumpS(100));
        network.enter(new Interval(100, 120, 0));
        network.contribute(100, network.initialState(), network.newLiveFlows());
        network.surround(100, network.newSlowFlows());
        assertEquals(
                List.of(
                        "enter 50.0 at 110.0",
                        "enter 20.0 at 110.0",
                        "contribute 50.0",
                        "contribute 20.0",
                        "plain",
                        "slow"),
                heard);
    }

    @Test
    void withoutSchedulesNothingJumps() {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(node("slurry", 1, -1));
        assembly.part((timeS, state, flows) -> flows.heat(0, 1, Flows.UNMETERED));
        assertEquals(Double.POSITIVE_INFINITY, assembly.build().nextJumpS(0));
    }

    @Test
    void statesAreCopiedWhole() {
        Network.Assembly assembly = new Network.Assembly();
        assembly.node(node("slurry", 1, -1));
        assembly.stock(new Network.Stock("solids", 3));
        assembly.switchOf("pump", (timeS, state, on) -> -1);
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
