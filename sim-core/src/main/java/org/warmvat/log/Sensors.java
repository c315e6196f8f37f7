package org.warmvat.log;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.warmvat.weather.WeatherRefused;

/** The slurry's thermometers: {@code slurry_c}, or {@code slurry_NAME_c} where there are several. */
final class Sensors {

    private static final Pattern NAMED = Pattern.compile("slurry(?:_([A-Za-z0-9]+(?:_[A-Za-z0-9]+)*))?_c");

    private Sensors() {}

    static boolean isSensor(String column) {
        return NAMED.matcher(column).matches();
    }

    /** The columns to take: all, or the one of a name. */
    static List<String> chosen(List<String> columns, Optional<String> wanted) throws WeatherRefused {
        List<String> sensors =
                columns.stream().filter(Sensors::isSensor).sorted().toList();
        if (wanted.isEmpty()) {
            return sensors;
        }
        List<String> chosen = sensors.stream()
                .filter(column -> column.equals(wanted.get()) || name(column).equals(wanted.get()))
                .toList();
        if (chosen.isEmpty()) {
            throw new WeatherRefused("--sensor " + wanted.get() + ": the log has no such sensor, expected one of "
                    + String.join(", ", sensors.stream().map(Sensors::name).toList()));
        }
        return chosen;
    }

    /** What a sensor is called: its NAME, or the whole column where there is none. */
    static String name(String column) {
        Matcher matcher = NAMED.matcher(column);
        return matcher.matches() && matcher.group(1) != null ? matcher.group(1) : column;
    }
}
