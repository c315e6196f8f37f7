package org.warmvat.log;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

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

    private static final double STEPS_OF_A_GAP = 3;

    /** Loggers are late by seconds. */
    private static final double CLOCK_S = 30;

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

    /** The same with a column that reads the same all along, and a word on why. */
    public Log with(LogColumn column, double value, String note) {
        Map<LogColumn, Readings> more = new EnumMap<>(LogColumn.class);
        more.putAll(readings);
        more.put(column, new Readings(new double[] {0}, new double[] {value}));
        List<String> said = new ArrayList<>(notes);
        said.add(note);
        return new Log(start, utcOffsetH, slurryC, more, steps, said);
    }

    /**
     * The log cut wherever what went in is not known: where the slurry was not read for more than three steps, where no value of a heat
     * covers the time between two readings, and where single rows of it are missing while it changed. Each stretch starts afresh.
     *
     * @param fewest stretches of fewer readings are left out
     * @param doubtfulJ heat that may be in doubt without harm, J
     */
    public List<Log> stretches(int fewest, double doubtfulJ) {
        double[] times = slurryC.timesS();
        double gapS = STEPS_OF_A_GAP * slurryC.medianStepS();
        List<Log> stretches = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= times.length; i++) {
            if (i == times.length || times[i] - times[i - 1] > gapS || isInDoubt(times[i - 1], times[i], doubtfulJ)) {
                if (i - first >= fewest) {
                    stretches.add(stretch(first, i - 1));
                }
                first = i;
            }
        }
        return stretches;
    }

    private boolean isInDoubt(double fromS, double toS, double doubtfulJ) {
        return heats().map(steps::get)
                .anyMatch(rates -> rates.unknownS(fromS, toS) > CLOCK_S || rates.doubt(fromS, toS) > doubtfulJ);
    }

    /** The heats that count. */
    private Stream<LogColumn> heats() {
        return steps.keySet().stream()
                .filter(LogColumn::isHeat)
                .filter(heat -> heat != LogColumn.BACKUP_ELECTRIC || !steps.containsKey(LogColumn.BACKUP_HEAT));
    }

    Log stretch(int first, int last) {
        double zeroS = slurryC.timesS()[first];
        Map<LogColumn, Readings> lines = new EnumMap<>(LogColumn.class);
        readings.forEach((column, line) -> lines.put(column, line.since(zeroS)));
        Map<LogColumn, Steps> rates = new EnumMap<>(LogColumn.class);
        steps.forEach((column, rate) -> rates.put(column, rate.since(zeroS)));
        LocalDateTime begins = start.plusNanos(Math.round(1e9 * zeroS));
        return new Log(begins, utcOffsetH, slurryC.between(first, last), lines, rates, notes);
    }

    /** From the first reading of the slurry to the last, s. */
    public double spanS() {
        double[] times = slurryC.timesS();
        return times[times.length - 1];
    }
}
