package org.warmvat.engine;

import java.util.concurrent.CancellationException;
import java.util.function.IntConsumer;

/** Hands finished hours on, and stops when asked; the same for every engine. */
public final class HourLoop {

    private HourLoop() {}

    /**
     * Runs an engine over some hours.
     *
     * @param record filled while an hour runs
     * @param hours the weather hours
     * @param integrator integrates over an hour
     * @param sink receives each hour and may end the run early
     */
    public static void run(HourRecord record, Hours hours, IntConsumer integrator, HourSink sink) {
        for (int hour = hours.first(); hour < hours.end(); hour++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("stopped at hour " + hour);
            }
            record.begin(hour);
            integrator.accept(hour);
            if (!sink.accept(record)) {
                return;
            }
        }
    }
}
