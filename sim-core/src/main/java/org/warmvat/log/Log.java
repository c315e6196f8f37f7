package org.warmvat.log;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was logged, times in seconds since {@link #start()}, the first reading of the slurry.
 *
 * @param start the logger's clock at the first reading of the slurry
 * @param utcOffsetH that clock less universal time, where the files say it
 * @param slurryC temperature of the slurry
 * @param readings what was read at rows
 * @param steps rates over the steps between rows: W, W/m2, kg/s, share
 * @param notes what was done to the rows, one sentence each
 */
public record Log(
        LocalDateTime start,
        OptionalDouble utcOffsetH,
        Readings slurryC,
        Map<LogColumn, Readings> readings,
        Map<LogColumn, Steps> steps,
        List<String> notes) {

    /** Copies. */
    public Log {
        readings = Map.copyOf(readings);
        steps = Map.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /** Readings of a column, where the log has it. */
    public Optional<Readings> readings(LogColumn column) {
        return Optional.ofNullable(readings.get(column));
    }

    /** Rates of a column, where the log has it. */
    public Optional<Steps> steps(LogColumn column) {
        return Optional.ofNullable(steps.get(column));
    }

    /** From the first reading of the slurry to the last, s. */
    public double spanS() {
        double[] times = slurryC.timesS();
        return times[times.length - 1];
    }
}
