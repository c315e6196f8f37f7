package org.warmvat.cli.answer;

import java.time.Month;
import java.util.List;
import java.util.stream.IntStream;
import org.warmvat.design.Design;
import org.warmvat.weather.Weather;

/**
 * What a study was asked about.
 *
 * @param design the design
 * @param weathers the weather files
 * @param engine name of the engine
 * @param assumed what the reading of design and weather assumed
 * @param warnings doubts about them
 */
public record Asked(Design design, List<Weather> weathers, String engine, List<String> assumed, List<String> warnings) {

    private static final int LEAP_YEAR_HOURS = 8784;

    /** Tank, weather and engine in a line. */
    String subtitle() {
        List<String> sites =
                weathers.stream().map(one -> one.site().name()).distinct().toList();
        return Words.fixed(design.tank().liquidVolumeM3() * 1000, 0) + " litres of slurry, set-point "
                + Words.celsius(design.control().setpointC()) + ", floor " + floor() + "; weather of "
                + Words.list(sites) + "; " + engine + " engine";
    }

    /** One of several weather files in words. */
    String fileName(int file) {
        Weather weather = weathers.get(file);
        return "weather file " + (file + 1) + " (" + weather.site().name() + ", from "
                + Words.day(weather.start().toLocalDate(), true) + ")";
    }

    /** The floor temperature in words. */
    String floor() {
        return Words.celsius(design.control().floorC());
    }

    /** The months of the calendar that the first weather file holds hours of. */
    List<Month> months() {
        Weather weather = weathers.get(0);
        return IntStream.range(0, weather.hours())
                .mapToObj(hour -> weather.start().plusHours(hour).getMonth())
                .distinct()
                .sorted()
                .toList();
    }

    /** Whether a date needs its year to be told. */
    boolean withYear() {
        return weathers.stream().anyMatch(weather -> weather.hours() > LEAP_YEAR_HOURS);
    }
}
