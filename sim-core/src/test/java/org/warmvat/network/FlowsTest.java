package org.warmvat.network;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What the parts contribute, added up: signs, meters, linearised heats. */
class FlowsTest {
    private final Network.Assembly assembly = new Network.Assembly();
    private final int slurry = assembly.node(new Network.Node("slurry", 10, -1, 36, false));
    private final int shell = assembly.node(new Network.Node("shell", 1, slurry, 16, false));
    private final int inward = assembly.meter("inward");
    private final int outside = assembly.meter("outside");
    private final int heat = assembly.meter("heat");
    private final int count = assembly.meter("count");

    private static double[] metersAt(Network network, Flows flows, State now, State contributed, double weight) {
        double[] totals = new double[network.meters().size()];
        flows.addMeters(now, contributed, network.parents(), weight, totals);
        return totals;
    }

    /** Positive is what the parent receives through a link, what the node receives from outside, what a heat gives. */
    @Test
    void metersCountWhatIsReceived() {
        assembly.part((timeS, state, flows) -> {
            flows.link(shell, 2, inward);
            flows.exchange(shell, 3, 6, outside);
            flows.heat(slurry, 50, heat);
            flows.meter(count, 7);
            flows.meter(count, 1);
        });
        Network network = assembly.build();
        State state = network.initialState();
        Flows flows = network.newLiveFlows();
        network.contribute(0, state, flows);
        assertArrayEquals(new double[] {-80, -60, 100, 16}, metersAt(network, flows, state, state, 2));
    }

    /** Each node receives {@code source - conductance x T} besides its links. */
    @Test
    void sumsGiveEachNodeItsSourceAndConductance() {
        assembly.part((timeS, state, flows) -> {
            flows.exchange(slurry, 2, 5, outside);
            flows.exchange(slurry, 4, -1, Flows.UNMETERED);
            flows.heat(slurry, 30, heat);
            flows.heat(shell, 12, -3, 0.5, heat);
        });
        Network network = assembly.build();
        State state = network.initialState();
        Flows flows = network.newLiveFlows();
        network.contribute(0, state, flows);
        assertEquals(6, flows.conductanceWPerK(slurry));
        assertEquals(3, flows.conductanceWPerK(shell));
        // the heat of 12 W at 16 °C falls by 3 W/K: as a source it is 12 + 3 x 16
        assertEquals(2 * 5 - 4 + 30, flows.sourceW(slurry));
        assertEquals(60, flows.sourceW(shell));
    }

    /** Away from where it was contributed a sloped heat is metered along its slope. */
    @Test
    void slopedHeatsFollowTheirSlope() {
        assembly.part((timeS, state, flows) -> flows.heat(shell, 12, -3, 0.5, heat));
        Network network = assembly.build();
        State contributed = network.initialState();
        State now = contributed.copy();
        now.setNodeC(shell, 18);
        now.setNodeC(slurry, 0);
        Flows flows = network.newLiveFlows();
        network.contribute(0, contributed, flows);
        assertEquals(6, metersAt(network, flows, now, contributed, 1)[heat]);
        // half the bend times the square of 2 K
        assertEquals(1, flows.slopeErrorW(contributed, now));
    }

    /** The largest of bends and corners counts, whichever way the heat bends, and no corner outlasts its instant. */
    @Test
    void cornersAndBendsTellHowFarASlopeMayBeWrong() {
        assembly.part((timeS, state, flows) -> {
            flows.heat(shell, 12, -3, -0.5, heat);
            flows.corner(shell, timeS > 0 ? 0 : 2);
            flows.corner(shell, 0.25);
        });
        Network network = assembly.build();
        State contributed = network.initialState();
        State threeAway = contributed.copy();
        threeAway.setNodeC(shell, contributed.nodeC(shell) + 3);
        Flows flows = network.newLiveFlows();
        double[] expectedW = {0.5 * 2 * 9, 0.5 * 0.5 * 9};
        for (int timeS = 0; timeS < expectedW.length; timeS++) {
            network.contribute(timeS, contributed, flows);
            assertEquals(-0.5, flows.bendWPerK2(shell));
            assertEquals(expectedW[timeS], flows.slopeErrorW(contributed, threeAway));
        }
    }

    /** Only heats with a bend can be wrong away from where they were linearised. */
    @Test
    void constantHeatsNeverNeedRepeating() {
        assembly.part((timeS, state, flows) -> flows.heat(slurry, 12, heat));
        Network network = assembly.build();
        State contributed = network.initialState();
        State now = contributed.copy();
        now.setNodeC(slurry, 0);
        Flows flows = network.newLiveFlows();
        network.contribute(0, contributed, flows);
        assertEquals(0, flows.slopeErrorW(contributed, now));
    }

    /** Far more flows than room was made for at first, and every gathering starts empty. */
    @Test
    void anyNumberOfFlowsIsKept() {
        assembly.part((timeS, state, flows) -> {
            for (int i = 0; i < 100; i++) {
                flows.exchange(slurry, 1, i, outside);
                flows.heat(slurry, 2, heat);
            }
        });
        Network network = assembly.build();
        State state = network.initialState();
        Flows flows = network.newLiveFlows();
        for (int round = 0; round < 3; round++) {
            network.contribute(0, state, flows);
        }
        double[] meters = metersAt(network, flows, state, state, 1);
        assertEquals(99 * 100 / 2 - 100 * 36, meters[outside]);
        assertEquals(200, meters[heat]);
    }

    @Test
    void stocksAddUpGainAndLoss() {
        int solids = assembly.stock(new Network.Stock("solids", 1));
        assembly.part((timeS, state, flows) -> flows.stock(solids, 2, 0.1));
        assembly.part((timeS, state, flows) -> flows.stock(solids, 3, 0.2));
        Network network = assembly.build();
        Flows flows = network.newLiveFlows();
        network.contribute(0, network.initialState(), flows);
        assertEquals(5, flows.gainPerS(solids));
        assertEquals(0.3, flows.lossPerS(solids), 1e-15);
    }
}
