package org.warmvat.log;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.FileFaults;
import org.warmvat.weather.file.TextFile;

/** Reads the files of a log, one after another in time, in whatever order they are named. */
public final class LogFiles {

    private static final int SECONDS_PER_HOUR = 3600;

    private LogFiles() {}

    /**
     * A file.
     *
     * @param name for messages
     * @param text all of it
     */
    public record Source(String name, String text) {

        /** The file of some bytes, UTF-8 with or without a byte-order mark, or Latin-1. */
        public static Source of(String name, byte[] bytes) throws WeatherRefused {
            return new Source(name, TextFile.decode(name, bytes, !TextFile.isUtf8(bytes)));
        }
    }

    /**
     * Reads a log.
     *
     * @param sources its files, at least one
     * @param layout how they are laid out, unless they are Warmvat's own
     * @param sensor name of the sensor to take; the mean of all without
     * @throws WeatherRefused when it cannot be used, with every fault found
     */
    public static Log read(List<Source> sources, Optional<LogLayout> layout, Optional<String> sensor)
            throws WeatherRefused {
        List<LogTable> tables = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (Source source : sources) {
            try {
                LogCsv csv = new LogCsv(source.text(), new FileFaults(source.name()));
                tables.add(layout.isPresent() ? csv.read(layout.get()) : csv.read());
            } catch (WeatherRefused e) {
                faults.addAll(e.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new WeatherRefused(faults);
        }
        List<LogTable> inOrder = inOrder(tables);
        Set<String> columns = new LinkedHashSet<>();
        inOrder.forEach(table -> columns.addAll(table.columns()));
        return new LogAssembly(inOrder, Sensors.chosen(List.copyOf(columns), sensor)).log();
    }

    /** Files by their first rows, all on the clock of the first. */
    private static List<LogTable> inOrder(List<LogTable> tables) throws WeatherRefused {
        List<LogTable> sorted = new ArrayList<>(tables);
        sorted.sort(Comparator.comparingLong(table -> table.rows().get(0).second()));
        LogTable first = sorted.get(0);
        List<LogTable> onOneClock = new ArrayList<>(List.of(first));
        for (LogTable table : sorted.subList(1, sorted.size())) {
            LogTable shifted = onClockOf(first, table);
            LogTable before = onOneClock.get(onOneClock.size() - 1);
            LogRow last = before.rows().get(before.rows().size() - 1);
            LogRow next = shifted.rows().get(0);
            if (next.second() <= last.second()) {
                throw new WeatherRefused(table.file() + " line " + next.line() + ": begins before " + before.file()
                        + " ends (line " + last.line() + "), expected files that follow one another");
            }
            onOneClock.add(shifted);
        }
        return onOneClock;
    }

    private static LogTable onClockOf(LogTable first, LogTable table) throws WeatherRefused {
        if (first.utcOffsetH().isPresent() != table.utcOffsetH().isPresent()) {
            throw new WeatherRefused(table.file() + ": utc_offset_h is stated in one of " + first.file() + " and "
                    + table.file() + " only, expected in both or in none");
        }
        double aheadH = table.utcOffsetH().orElse(0) - first.utcOffsetH().orElse(0);
        long shift = Math.round(aheadH * SECONDS_PER_HOUR);
        List<LogRow> rows = table.rows().stream()
                .map(row -> new LogRow(row.second() - shift, row.line(), row.values()))
                .toList();
        return new LogTable(table.file(), first.utcOffsetH(), table.columns(), rows);
    }

    /** Whether a log may have a column of a name, time left out. */
    public static boolean isColumn(String name) {
        return isSensor(name) || LogColumn.ofKey(name).isPresent();
    }

    /** Whether a column is a temperature of the slurry: {@code slurry_c} or {@code slurry_NAME_c}. */
    public static boolean isSensor(String name) {
        return Sensors.isSensor(name);
    }

    /** Names that a log's columns may have. */
    public static List<String> columns() {
        List<String> names = new ArrayList<>(List.of("time", "slurry_c", "slurry_NAME_c"));
        for (LogColumn column : LogColumn.values()) {
            names.add(column.key());
        }
        return names;
    }
}
