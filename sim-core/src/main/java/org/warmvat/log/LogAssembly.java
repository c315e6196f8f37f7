package org.warmvat.log;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.warmvat.weather.WeatherRefused;

/** Makes a log of the rows of its files: sensors become one, rows finer than ten minutes are averaged, columns become lines or steps. */
final class LogAssembly {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double STEPS_OF_A_GAP = 3;

    private final List<LogTable> tables;
    private final List<String> sensors;
    private final List<String> notes = new ArrayList<>();

    LogAssembly(List<LogTable> tables, List<String> sensors) {
        this.tables = tables;
        this.sensors = sensors;
    }

    Log log() throws WeatherRefused {
        double[] second = tables.stream()
                .flatMap(table -> table.rows().stream())
                .mapToDouble(LogRow::second)
                .toArray();
        double[] slurryC = slurryC(second.length);
        refuseADeadSensor(second.length);
        int first = firstReading(slurryC);
        double[] timeS = new double[second.length - first];
        for (int row = 0; row < timeS.length; row++) {
            timeS[row] = second[first + row] - second[first];
        }
        if (sensors.size() > 1) {
            notes.add("The slurry is taken as the mean of the sensors "
                    + String.join(", ", sensors.stream().map(Sensors::name).toList()) + ", where all have a value.");
        }
        Rows rows = Rows.of(timeS);
        if (rows.isAveraged()) {
            notes.add("Rows finer than ten minutes are averaged over ten minutes.");
        }
        Readings slurry = rows.readings(tail(slurryC, first)).orElseThrow();
        tellOfGaps(slurry);
        Map<LogColumn, Readings> readings = new EnumMap<>(LogColumn.class);
        Map<LogColumn, Steps> steps = new EnumMap<>(LogColumn.class);
        for (LogColumn column : LogColumn.values()) {
            double[] values = tail(column(column.key(), second.length), first);
            if (column.kind() == LogColumn.Kind.AT_THE_ROW) {
                rows.readings(values).ifPresent(found -> readings.put(column, found));
            } else {
                rows.steps(values, column.kind()).ifPresent(found -> steps.put(column, found));
            }
        }
        tellOfHoles(slurry, readings, steps);
        LocalDateTime start = LocalDateTime.ofEpochSecond((long) second[first], 0, ZoneOffset.UTC);
        return new Log(start, tables.get(0).utcOffsetH(), slurry, readings, steps, notes);
    }

    private int firstReading(double[] slurryC) throws WeatherRefused {
        for (int row = 0; row < slurryC.length; row++) {
            if (!Double.isNaN(slurryC[row])) {
                return row;
            }
        }
        throw new WeatherRefused(tables.get(0).file() + ": no row has a value of " + String.join(" and ", sensors)
                + ", expected readings of the slurry");
    }

    /** The mean of all sensors knows nothing once one of them is dead. */
    private void refuseADeadSensor(int rows) throws WeatherRefused {
        List<Long> values = sensors.stream()
                .map(sensor -> Arrays.stream(column(sensor, rows))
                        .filter(value -> !Double.isNaN(value))
                        .count())
                .toList();
        long least = Collections.min(values);
        if (least > 0 && 2 * least < Collections.max(values)) {
            throw new WeatherRefused(String.format(
                    Locale.ROOT,
                    "%s: the sensors %s have values in %s rows, and their mean is known only where all have one; expected --sensor"
                            + " with the name of one that lived",
                    tables.get(0).file(),
                    String.join(", ", sensors.stream().map(Sensors::name).toList()),
                    String.join(", ", values.stream().map(String::valueOf).toList())));
        }
    }

    private double[] slurryC(int rows) {
        double[] mean = new double[rows];
        for (String sensor : sensors) {
            double[] values = column(sensor, rows);
            for (int row = 0; row < rows; row++) {
                mean[row] += values[row] / sensors.size();
            }
        }
        return mean;
    }

    private double[] column(String name, int rows) {
        double[] values = new double[rows];
        int at = 0;
        for (LogTable table : tables) {
            for (LogRow row : table.rows()) {
                values[at++] = table.value(row, name);
            }
        }
        return values;
    }

    private static double[] tail(double[] values, int from) {
        return Arrays.copyOfRange(values, from, values.length);
    }

    private void tellOfGaps(Readings slurry) {
        double[] times = slurry.timesS();
        double median = Rows.medianStepS(times);
        int gaps = 0;
        double longest = 0;
        for (int i = 1; i < times.length; i++) {
            double step = times[i] - times[i - 1];
            gaps += step > STEPS_OF_A_GAP * median ? 1 : 0;
            longest = Math.max(longest, step);
        }
        if (gaps > 0) {
            notes.add(String.format(
                    Locale.ROOT,
                    "The slurry's readings have %d %s of more than three steps, the longest %.1f h; after each the tank"
                            + " starts afresh.",
                    gaps,
                    gaps == 1 ? "gap" : "gaps",
                    longest / SECONDS_PER_HOUR));
        }
    }

    /** Columns with holes where the slurry was read: gaps of whole rows were told. */
    private void tellOfHoles(Readings slurry, Map<LogColumn, Readings> readings, Map<LogColumn, Steps> steps) {
        for (LogColumn column : LogColumn.values()) {
            double unknownS = 0;
            double[] times = slurry.timesS();
            for (int i = 1; i < times.length; i++) {
                double middleS = 0.5 * (times[i - 1] + times[i]);
                boolean gap = times[i] - times[i - 1] > STEPS_OF_A_GAP * slurry.medianStepS();
                boolean hole = (steps.containsKey(column) && !steps.get(column).isKnown(middleS))
                        || (readings.containsKey(column)
                                && !readings.get(column).isKnown(middleS));
                unknownS += hole && !gap ? times[i] - times[i - 1] : 0;
            }
            if (unknownS > 0 && column.kind() != LogColumn.Kind.SUM && column != LogColumn.MIXER) {
                notes.add(String.format(
                        Locale.ROOT,
                        "%s is empty over %.1f h in all: %s",
                        column.key(),
                        unknownS / SECONDS_PER_HOUR,
                        column.isHeat()
                                ? "what went in then is not known, and the log is left out there. Write 0 where nothing went in."
                                : "the weather file's stands in where there is one, else what the rows about it say."));
            }
        }
    }
}
