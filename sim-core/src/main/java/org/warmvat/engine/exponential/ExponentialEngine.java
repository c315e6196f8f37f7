package org.warmvat.engine.exponential;

import org.warmvat.engine.Engine;
import org.warmvat.engine.HourLoop;
import org.warmvat.engine.HourRecord;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.Hours;
import org.warmvat.engine.SteadyStart;
import org.warmvat.network.Network;
import org.warmvat.network.State;

/**
 * The everyday engine: chains by their exact modes an hour at a time, slurry and circuits in closed form from switching to switching. It
 * reads the same description as the reference engine and keeps nothing from run to run.
 */
public final class ExponentialEngine implements Engine {

    @Override
    public String name() {
        return "fast";
    }

    @Override
    public void run(Network network, State state, Hours hours, HourSink sink) {
        if (hours.first() == hours.end()) {
            return;
        }
        HourRecord record = new HourRecord(network, state);
        SteadyStart.enter(network, state, hours.first());
        WaveformRelaxation relaxation = new WaveformRelaxation(network, state, record);
        record.completeBy(relaxation::complete);
        HourLoop.run(record, hours, relaxation::over, sink);
        relaxation.complete();
    }
}
