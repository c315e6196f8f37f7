package org.warmvat.weather.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.LineCells;
import org.warmvat.weather.layout.TimeForm;

/**
 * The National Solar Radiation Database of the U.S. (NSRDB) as CSV: names and values of the site in two lines, then a line of names and
 * rows of 5 to 60 minutes, each an instant, as its own column of the sun's zenith angle shows.
 */
final class Nsrdb {
    private static final List<Integer> STEPS = List.of(5, 10, 15, 30, 60);

    private Nsrdb() {}

    static Optional<Recognised> in(TextHead head) {
        List<String> keys = LineCells.of(head.line(0), ',');
        List<String> names = LineCells.of(head.line(2), ',');
        boolean like = keys.containsAll(List.of("Latitude", "Longitude", "Time Zone", "Elevation"))
                && names.containsAll(List.of("Year", "Month", "Day", "Hour"));
        int step = like ? stepMinutes(head) : 0;
        if (!STEPS.contains(step)) {
            return Optional.empty();
        }
        boolean minutes = names.contains("Minute");
        boolean middle = step == 60 && head.line(3).matches("[0-9]+,[0-9]+,[0-9]+,[0-9]+,30,.*");
        Layout layout = new Layout(
                new Layout.Text(2, true, ',', '.'),
                new Layout.Time(
                        time(minutes),
                        new TimeForm(minutes ? "YYYY M D h m" : "YYYY M D h"),
                        middle ? Stamp.HOUR_MIDDLE : Stamp.HOUR_START,
                        Layout.Clock.LOCAL,
                        false,
                        step,
                        middle ? OptionalDouble.empty() : OptionalDouble.of(0)),
                columns(names),
                Set.of("-9999"),
                site(head, keys));
        String times = middle
                ? "a row's time is the middle of its hour"
                : "rows every " + step + " min are instants, put together into hours";
        return Optional.of(new Recognised("a file of NSRDB", times + "; the clock is that of its time zone", layout));
    }

    private static List<Layout.Place> time(boolean minutes) {
        List<Layout.Place> time = new ArrayList<>();
        for (String name :
                minutes ? List.of("Year", "Month", "Day", "Hour", "Minute") : List.of("Year", "Month", "Day", "Hour")) {
            time.add(new Layout.ByHeading(name));
        }
        return time;
    }

    private static Map<Quantity, Layout.Column> columns(List<String> names) {
        return new Columns(names)
                .must(Quantity.AIR, "Temperature")
                .must(Quantity.GLOBAL, "GHI")
                .may(Quantity.BEAM, "DNI")
                .may(Quantity.DIFFUSE, "DHI")
                .may(Quantity.DEW_POINT, "Dew Point")
                .may(Quantity.RELATIVE_HUMIDITY, "Relative Humidity", 0.01)
                .may(Quantity.WIND, "Wind Speed")
                .may(Quantity.PRESSURE, "Pressure")
                .map();
    }

    private static int stepMinutes(TextHead head) {
        return Math.floorMod(minuteOfDay(head.line(4)) - minuteOfDay(head.line(3)), 1440);
    }

    private static int minuteOfDay(String row) {
        return row.matches("([0-9]{1,4},){4}[0-9]{1,2},.*")
                ? 60 * Integer.parseInt(row.split(",")[3]) + Integer.parseInt(row.split(",")[4])
                : row.matches("([0-9]{1,4},){4}.*") ? 60 * Integer.parseInt(row.split(",")[3]) : 0;
    }

    private static Layout.SiteSource site(TextHead head, List<String> keys) {
        int id = keys.indexOf("Location ID");
        List<String> values = LineCells.of(head.line(1), ',');
        String name = id >= 0 && id < values.size() ? "NSRDB " + values.get(id) : "NSRDB";
        return new Layout.SiteSource(
                Layout.Source.of(name),
                Layout.Source.at(2, keys.indexOf("Latitude") + 1),
                Layout.Source.at(2, keys.indexOf("Longitude") + 1),
                Layout.Source.at(2, keys.indexOf("Elevation") + 1),
                Layout.Source.at(2, keys.indexOf("Time Zone") + 1));
    }
}
