package org.warmvat.engine.reference;

import org.warmvat.engine.Engine;
import org.warmvat.engine.HourLoop;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
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
        HourLoop.run(record, hours, new ReferenceIntegration(network, state, record)::over, sink);
    }
}
