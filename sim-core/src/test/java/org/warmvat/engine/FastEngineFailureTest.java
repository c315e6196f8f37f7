package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.warmvat.network.Flows;
import org.warmvat.network.Network;

/** The fast engine ends a run with a message where it can promise nothing, and never hands on a number that is none. */
class FastEngineFailureTest {

    private static EngineFailure failure(Network network) {
        return assertThrows(EngineFailure.class, () -> Engines.FAST.run(network, 4));
    }

    @Test
    void aHeatThatIsNoNumberEndsTheRun() {
        Body body = new Body(1e6, 30);
        body.assembly.part((timeS, state, flows) ->
                flows.heat(body.slurry, timeS < 2.5 * Body.HOUR_S ? 100 : Double.NaN, Flows.UNMETERED));
        assertEquals(
                "the fast engine could not go on at hour 2: no temperatures agree with the heats that they make",
                failure(body.build()).getMessage());
    }

    @Test
    void aLayerThatIsHeatedFromElsewhereLaterOnlyEndsTheRun() {
        Body body = new Body(1e6, 30);
        int layer = body.assembly.node(new Network.Node("layer", 1e4, body.slurry, 20, true, 5));
        body.assembly.slowPart((timeS, flows) -> {
            if (timeS > 2 * Body.HOUR_S - 1) {
                flows.heat(layer, 10, Flows.UNMETERED);
            }
        });
        String message = failure(body.build()).getMessage();
        assertTrue(message.startsWith("node 1 receives heat from elsewhere than its neighbours"), message);
    }
}
