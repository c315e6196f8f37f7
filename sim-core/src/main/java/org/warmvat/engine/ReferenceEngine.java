package org.warmvat.engine;

import java.util.concurrent.CancellationException;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The engine to be trusted: Dormand and Prince's explicit 8(5,3) pair of Apache Commons Math with tight tolerances, events
 * located on the dense output, restarts at every jump.
 *
 * <p>Explicit, so its step is bound by the fastest node: a thin sheet of metal or foam makes it slow, never wrong. The meters
 * are integrated along with the temperatures by the same formula but do not steer the step.
 */
public final class ReferenceEngine implements Engine {

    @Override
    public String name() {
        return "reference";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        HourRecord record = new HourRecord(network, state);
        ReferenceIntegration integration = new ReferenceIntegration(network, state, record);
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
