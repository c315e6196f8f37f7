package org.warmvat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.Part;
import org.warmvat.network.Source;

/** The everyday engine ends a run with a message where it can promise nothing, and never hands on a number that is none. */
class ExponentialEngineFailureTest {

    @Test
    void aHeatThatIsNoNumberEndsTheRun() {
        Body body = new Body(1e6, 30);
        Source source = body.assembly.source(Network.SLURRY, Network.UNMETERED);
        body.assembly.part(new Part() {
            @Override
            public void enter(Interval interval) {
                source.set(interval.hour() < 2 ? 100 : Double.NaN);
            }
        });
        assertEquals(
                "the fast engine could not go on at hour 2: the slurry's temperature is not a number",
                assertThrows(EngineFailure.class, () -> Engines.FAST.run(body.build(), 4))
                        .getMessage());
    }
}
