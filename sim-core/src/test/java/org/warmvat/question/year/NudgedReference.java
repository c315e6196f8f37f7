package org.warmvat.question.year;

import java.util.Random;
import org.warmvat.engine.Engine;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.reference.ReferenceEngine;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The reference engine with the slurry put off by chance at every full hour, never further than so many kelvin from where it would
 * stand. Where it does not agree with the reference engine itself, a run hangs on switchings that graze their thresholds, and no engine
 * can be held to its hours.
 */
final class NudgedReference implements Engine {

    private final double mostK;
    private final Random random;

    NudgedReference(double mostK, long seed) {
        this.mostK = mostK;
        random = new Random(seed);
    }

    @Override
    public String name() {
        return "nudged reference";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        boolean[] goesOn = {true};
        double offK = 0;
        for (int hour = hours.first(); goesOn[0] && hour < hours.end(); hour++) {
            double nextK = mostK * (2 * random.nextDouble() - 1);
            state.setNodeC(Network.SLURRY, state.nodeC(Network.SLURRY) + nextK - offK);
            offK = nextK;
            new ReferenceEngine().run(network, state, new Hours(hour, hour + 1), record -> {
                goesOn[0] = sink.accept(record);
                return goesOn[0];
            });
        }
    }
}
