package org.warmvat.engine;

import java.util.concurrent.CancellationException;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The everyday engine: an implicit L-stable method whose stages are solved by eliminating the tree of nodes from its leaves,
 * with adaptive steps and switches located inside the step. It reads the same contributions as the reference engine.
 */
public final class FastEngine implements Engine {

    @Override
    public String name() {
        return "fast";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        HourRecord record = new HourRecord(network, state);
        FastIntegration integration = new FastIntegration(network, state, record);
        for (int hour = hours.first(); hour < hours.end(); hour++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("stopped at hour " + hour);
            }
            record.begin(hour);
            double timeS = hour * Hours.HOUR_S;
            double endS = timeS + Hours.HOUR_S;
            while (timeS < endS) {
                double jumpS = Math.min(endS, network.nextJumpS(timeS));
                integration.over(new Interval(timeS, jumpS, hour));
                timeS = jumpS;
            }
            if (!sink.accept(record)) {
                return;
            }
        }
    }
}
