package org.warmvat.question.fit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.warmvat.log.Log;
import org.warmvat.log.LogColumn;
import org.warmvat.log.Readings;
import org.warmvat.log.Steps;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;

/** The weather along a log, hour by hour from its first reading on: the log's own where it has some, the file's where not. */
final class LogWeather {

    private static final double HOUR_S = LogHours.HOUR_S;

    private final Log log;
    private final int hours;

    private LogWeather(Log log) {
        this.log = log;
        hours = LogHours.count(log);
    }

    /**
     * Makes the weather.
     *
     * @param log the log; with air where there is no file
     * @param file the weather file along it
     * @param groundC ground temperature by seconds of the file, where file or design tell it
     */
    static Weather of(Log log, Optional<FileAlong> file, Optional<DoubleUnaryOperator> groundC) {
        List<String> notes = new ArrayList<>(log.notes());
        file.ifPresent(along -> notes.add(along.words()));
        if (file.isEmpty()) {
            notes.add("Without a weather file no sun reaches the tank"
                    + (log.steps(LogColumn.GLOBAL).isPresent()
                            ? "; the sun of the log is left aside, since only the file says where the tank stands."
                            : "."));
        }
        Site site = file.map(along -> along.file().site())
                .map(there -> new Site(
                        there.name(),
                        there.latitudeDeg(),
                        there.longitudeDeg(),
                        there.elevationM(),
                        log.utcOffsetH().orElse(there.utcOffsetH())))
                .orElseGet(() ->
                        new Site("the log's place", 0, 0, 0, log.utcOffsetH().orElse(0)));
        LocalDateTime start = log.start().minusHours(LogHours.FIRST);
        Map<Quantity, double[]> columns = new LogWeather(log).columns(file);
        if (file.isPresent() && groundC.isPresent()) {
            columns.put(Quantity.GROUND, file.get().line(groundC.get()));
        }
        return new Weather(new HourlyTable(site, start, Stamp.HOUR_END, columns, new BitSet(), notes));
    }

    private Map<Quantity, double[]> columns(Optional<FileAlong> file) {
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        file.ifPresent(along -> columns.putAll(along.columns()));
        log.readings(LogColumn.AIR).ifPresent(air -> lay(air, columns, Quantity.AIR));
        log.readings(LogColumn.WIND).ifPresent(wind -> lay(wind, columns, Quantity.WIND));
        Optional<Steps> global = log.steps(LogColumn.GLOBAL);
        if (file.isEmpty()) {
            columns.put(Quantity.GLOBAL, new double[hours]);
        } else if (global.isPresent()) {
            columns.remove(Quantity.BEAM);
            columns.remove(Quantity.DIFFUSE);
            columns.put(Quantity.GLOBAL, sun(global.get(), global(file.get())));
        }
        columns.forEach(this::settle);
        return columns;
    }

    /** Hour 0 is dark, with the log's first air and wind. */
    private void settle(Quantity quantity, double[] values) {
        if (quantity.isSunlight()) {
            values[0] = 0;
        } else if (quantity == Quantity.AIR || quantity == Quantity.WIND) {
            values[0] = values[LogHours.FIRST - 1];
        }
    }

    /**
     * Lays a line of the log over the file's from its first reading on, gaps left to the file; without a file the day before is held, and
     * gaps are bridged.
     */
    private void lay(Readings readings, Map<Quantity, double[]> columns, Quantity quantity) {
        boolean finer = readings.medianStepS() < HOUR_S;
        boolean ofTheFile = columns.containsKey(quantity);
        double[] values = columns.computeIfAbsent(quantity, absent -> {
            double[] held = new double[hours];
            Arrays.fill(held, readings.at(0));
            return held;
        });
        for (int hour = LogHours.FIRST - 1; hour < hours; hour++) {
            double endS = LogHours.endS(hour);
            if (ofTheFile && !readings.isKnown(Math.max(0, Math.min(endS, log.spanS())))) {
                continue;
            }
            values[hour] = finer ? LogHours.meanAbout(endS, readings::at) : readings.at(endS);
        }
    }

    static double[] global(FileAlong file) {
        Weather weather = file.file();
        double[] values = IntStream.range(0, weather.hours())
                .mapToDouble(weather::globalWPerM2)
                .toArray();
        return file.means(values);
    }

    /**
     * The log's sun, hour by hour, holes left to the file. A step of several hours is spread as the file's own sun is within it: a mean
     * over a day says nothing of night and noon.
     */
    private double[] sun(Steps global, double[] ofTheFile) {
        double[] sun = ofTheFile.clone();
        int hour = LogHours.FIRST;
        while (hour < hours) {
            double startS = LogHours.endS(hour) - HOUR_S;
            if (!global.isKnown(startS + 0.5 * HOUR_S)) {
                hour++;
                continue;
            }
            int end = hour + 1;
            while (end < hours && LogHours.endS(end) <= global.nextEdgeS(startS) + 1) {
                end++;
            }
            double mean = global.mean(startS, LogHours.endS(end - 1));
            double fileMean = Arrays.stream(ofTheFile, hour, end).average().orElseThrow();
            for (; hour < end; hour++) {
                sun[hour] = fileMean > 0 && mean > 0 ? mean * ofTheFile[hour] / fileMean : mean;
            }
        }
        return sun;
    }
}
