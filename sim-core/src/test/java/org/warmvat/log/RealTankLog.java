package org.warmvat.log;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/**
 * Measured: a 150 litre solar tank of digester effluent, Kiambu, Kenya, 11 May to 1 July 2024 (Grimont, Tkaczuk and Tilley, Solar Water
 * Heater Modeling for Fecal Sludge Pasteurization, DOI 10.5281/zenodo.14006906, CC BY 4.0). The data are not part of this program: the
 * folder that {@code -Dreal.logs} names holds them, and without it what uses them is skipped.
 */
public final class RealTankLog {

    /** T2 stands in the tank, T3 in the raw effluent beside it, the stand-in for its surroundings. */
    public static final LogLayout LAYOUT = new LogLayout(
            new Layout.Text(0, true, ',', '.'),
            List.of(new Layout.ByHeading("Date"), new Layout.ByHeading("Time")),
            List.of(new TimeForm("M/D/YY hh:mm:ss"), new TimeForm("YYYY/MM/DD hh:mm:ss")),
            OptionalDouble.of(3),
            Map.of(
                    "slurry_c",
                    LogLayout.Column.of(new Layout.Column(new Layout.ByHeading("T2"), 1, 0)),
                    "air_c",
                    new LogLayout.Column(new Layout.Column(new Layout.ByHeading("T3"), 1, 0), 5, 40)),
            Set.of("#NAME?", "-OL", "OL"));

    private RealTankLog() {}

    /** The folder of the tank; skips the test, saying so, where there is none. */
    public static Path folder() {
        String folder = System.getProperty("real.logs", "");
        assumeTrue(!folder.isEmpty(), "measured logs are looked for where -Dreal.logs names a folder");
        return Path.of(folder, "tank_150l");
    }

    /** The files of temperatures. */
    public static List<LogFiles.Source> sources() throws IOException, WeatherRefused {
        List<LogFiles.Source> sources = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder().resolve("temperature"))) {
            for (Path file : files.sorted().toList()) {
                sources.add(LogFiles.Source.of(file.getFileName().toString(), Files.readAllBytes(file)));
            }
        }
        return sources;
    }

    /** Each night from 19 to 6 o'clock as a log of its own, by the date of its evening. */
    public static SortedMap<LocalDate, Log> nights() throws IOException, WeatherRefused {
        Log whole = LogFiles.read(sources(), Optional.of(LAYOUT), Optional.empty());
        SortedMap<LocalDate, List<Integer>> rows = new TreeMap<>();
        double[] times = whole.slurryC().timesS();
        for (int row = 0; row < times.length; row++) {
            LocalDateTime time = whole.start().plusSeconds(Math.round(times[row]));
            if (time.getHour() >= 19 || time.getHour() < 6) {
                rows.computeIfAbsent(time.minusHours(6).toLocalDate(), night -> new ArrayList<>())
                        .add(row);
            }
        }
        SortedMap<LocalDate, Log> nights = new TreeMap<>();
        rows.forEach((night, own) -> nights.put(night, whole.stretch(own.get(0), own.get(own.size() - 1))));
        return nights;
    }

    /**
     * The whole log with the sun's heat as its authors take it: light times 0.0079 W/m2 per lux, 1.566 m2 of aperture and their gain of
     * 0.9931; none in the dark, unknown where the light was not logged by day.
     */
    public static Log wholeWithSun() throws IOException, WeatherRefused {
        Log whole = LogFiles.read(sources(), Optional.of(LAYOUT), Optional.empty());
        NavigableMap<LocalDateTime, Double> lux = lux();
        Readings air = whole.readings(LogColumn.AIR).orElseThrow();
        StringBuilder text = new StringBuilder("time,slurry_c,air_c,solar_heat_w\n");
        for (double t : whole.slurryC().timesS()) {
            LocalDateTime time = whole.start().plusSeconds(Math.round(t));
            text.append(time.format(DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss", Locale.ROOT)))
                    .append(',')
                    .append(whole.slurryC().at(t))
                    .append(',')
                    .append(air.isKnown(t) ? air.at(t) : "")
                    .append(',')
                    .append(sunW(time, lux))
                    .append('\n');
        }
        return LogFiles.read(
                List.of(new LogFiles.Source("whole.csv", text.toString())), Optional.empty(), Optional.empty());
    }

    private static String sunW(LocalDateTime time, NavigableMap<LocalDateTime, Double> lux) {
        SortedMap<LocalDateTime, Double> near = lux.subMap(time.minusMinutes(15), time.plusMinutes(15));
        if (!near.isEmpty()) {
            LocalDateTime nearest = Collections.min(
                    near.keySet(),
                    Comparator.comparing(other -> Duration.between(time, other).abs()));
            return Double.toString(0.9931 * 0.0079 * 1.566 * near.get(nearest));
        }
        return time.getHour() >= 19 || time.getHour() < 6 ? "0" : "";
    }

    /** The file of light repeats its heading at every restart and has rows in another unit. */
    private static NavigableMap<LocalDateTime, Double> lux() throws IOException {
        NavigableMap<LocalDateTime, Double> lux = new TreeMap<>();
        for (String line : Files.readAllLines(folder().resolve("lux.csv"))) {
            String[] cells = line.split(",");
            if (cells.length > 4 && cells[4].strip().equals("LUX")) {
                String clock = cells[1].strip() + " " + cells[2].strip();
                OptionalLong second = LAYOUT.forms().stream()
                        .map(form -> form.seconds(clock))
                        .filter(OptionalLong::isPresent)
                        .findFirst()
                        .orElseThrow();
                lux.put(
                        LocalDateTime.ofEpochSecond(second.getAsLong(), 0, ZoneOffset.UTC),
                        Double.parseDouble(cells[3].strip()));
            }
        }
        return lux;
    }
}
