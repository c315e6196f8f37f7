package org.warmvat.cli.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.InputFile;
import org.warmvat.cli.file.LayoutDocument;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.tank.Runner;
import org.warmvat.weather.MonthSummary;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.file.NormalsFile;
import org.warmvat.weather.file.Reading;
import org.warmvat.weather.file.WarmvatCsvText;
import org.warmvat.weather.file.WeatherFiles;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.made.MadeYear;
import org.warmvat.weather.made.Normals;

/** The weather files that the open pages work with: the samples, what was given at the start, and the last few that were dropped. */
final class Weathers {

    /** Largest file that a page may send, bytes. */
    static final int MOST_BYTES = 64 << 20;

    private static final int MOST_KEPT = 4;
    private static final List<String> SAMPLES =
            List.of("cool-maritime-hills", "cold-continental", "cool-southern", "sunny-high-valley");

    private final Map<String, Kept> kept = new LinkedHashMap<>();

    /**
     * A weather file that was read.
     *
     * @param id what the page calls it
     * @param source as it came
     * @param file its name in results, and its hash
     * @param runner starts tanks in it
     */
    record Kept(String id, Source source, InputFile file, Runner runner) {

        Kept(String id, Source source, Weather weather) {
            this(
                    id,
                    source,
                    InputFile.of("weather", "weather.csv", source.bytes()),
                    new Runner(weather, new ExponentialEngine()));
        }

        Weather weather() {
            return runner.file();
        }
    }

    /**
     * A weather file as it came, and how it is read.
     *
     * @param bytes the file
     * @param layout the layout file that says how it is laid out, where it is not to be recognised
     * @param fillHolesH longest hole that is filled from the days beside, h
     */
    public record Source(byte[] bytes, Optional<byte[]> layout, int fillHolesH) {

        /** A file that is recognised and without long holes. */
        static Source plain(byte[] bytes) {
            return new Source(bytes, Optional.empty(), 0);
        }

        private String id() {
            String own = hash(bytes) + "-" + fillHolesH;
            return layout.map(file -> own + "-" + hash(file)).orElse(own);
        }

        private static String hash(byte[] bytes) {
            return InputFile.of("weather", "", bytes).sha256().substring(0, 16);
        }

        private Reading reading() {
            Optional<Layout> read = layout.map(file -> LayoutDocument.read("layout file", file));
            return new Reading(read, fillHolesH, Reading.USUAL.beside());
        }
    }

    /** Names of the samples, the first being the one a page starts with. */
    static List<String> samples() {
        return SAMPLES;
    }

    /** A weather file by what the page calls it; empty when it was dropped too long ago. */
    synchronized Optional<Kept> of(String id) throws WeatherRefused {
        if (!kept.containsKey(id) && SAMPLES.contains(id)) {
            return Optional.of(keep(id, Source.plain(sample(id))));
        }
        return Optional.ofNullable(kept.get(id));
    }

    /**
     * Takes a file in.
     *
     * @throws WeatherRefused with every fault found
     * @throws org.warmvat.cli.file.InputRefused with every fault of its layout file
     */
    Kept take(Source source) throws WeatherRefused {
        return keep(source.id(), source);
    }

    /**
     * Takes twelve monthly means in, or a file of them, and makes a year of hours.
     *
     * @throws WeatherRefused with every fault found
     */
    Kept takeNormals(String text) throws WeatherRefused {
        Normals normals = NormalsFile.parse("monthly means", text);
        String made = WarmvatCsvText.of(MadeYear.of(normals), MadeYear.origin(normals));
        return take(Source.plain(made.getBytes(StandardCharsets.UTF_8)));
    }

    /** Takes in the weather that the command was given. */
    Kept take(Source source, Weather weather) {
        return put(new Kept("given", source, weather));
    }

    private Kept keep(String id, Source source) throws WeatherRefused {
        return put(new Kept(id, source, WeatherFiles.read("weather file", source.bytes(), source.reading())));
    }

    private synchronized Kept put(Kept one) {
        kept.put(one.id(), one);
        List<String> dropped = kept.keySet().stream()
                .filter(id -> !SAMPLES.contains(id) && !id.equals("given"))
                .toList();
        dropped.stream().limit(Math.max(0, dropped.size() - MOST_KEPT)).forEach(kept::remove);
        return one;
    }

    private static byte[] sample(String name) {
        try (InputStream in = WeatherFiles.class.getResourceAsStream("/org/warmvat/weather/" + name + ".csv")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the page says of a weather file: place, length, months, what was assumed and what is doubtful. */
    static Map<String, Object> told(Kept one) {
        Weather weather = one.weather();
        return Draft.row(
                "id", one.id(),
                "place", weather.site().name(),
                "latitude_deg", weather.site().latitudeDeg(),
                "hours", weather.hours(),
                "start", weather.start(),
                "months", MonthSummary.of(weather).stream().map(Weathers::month).toList(),
                "assumed", weather.assumptions(),
                "doubts", Doubts.of(weather).stream().map(Doubt::sentence).toList());
    }

    private static Map<String, Object> month(MonthSummary month) {
        return Draft.row(
                "month", month.month(), "air_c", month.airC().mean(), "sun_kwh_m2_day", month.globalKWhPerM2Day());
    }
}
