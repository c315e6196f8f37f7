package org.warmvat.engine;

import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.warmvat.network.Interval;
import org.warmvat.network.Network;

/** Cuts weather hours into intervals at every announced jump and hands the finished hours on; the same for every engine. */
final class HourLoop {

    private HourLoop() {}

    /**
     * Runs an engine over some hours.
     *
     * @param network announces its jumps
     * @param record filled while an hour runs
     * @param hours the weather hours
     * @param integrator integrates over an interval in which nothing scheduled jumps
     * @param sink receives each hour and may end the run early
     */
    static void run(Network network, HourRecord record, Hours hours, Consumer<Interval> integrator, HourSink sink) {
        for (int hour = hours.first(); hour < hours.end(); hour++) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("stopped at hour " + hour);
            }
            record.begin(hour);
            double timeS = hour * Hours.HOUR_S;
            double endS = timeS + Hours.HOUR_S;
            while (timeS < endS) {
                double jumpS = Math.min(endS, network.nextJumpS(timeS));
                integrator.accept(new Interval(timeS, jumpS, hour));
                timeS = jumpS;
            }
            if (!sink.accept(record)) {
                return;
            }
        }
    }
}
