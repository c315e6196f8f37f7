package org.warmvat.weather.service;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/**
 * Typical years as described by W. Marion and K. Urban (1995), "User's manual for TMY2s", NREL, section 3: fixed positions in lines, local
 * standard time at the end of the hour, radiation of the hour before it. The positions of tables 3-1 and 3-2 are from memory.
 */
final class Tmy2 {
    private static final Pattern STATION =
            Pattern.compile("^ (\\d{5}) (.{22}) (..)\\s+([+-]?\\s*\\d{1,2}) ([NS])\\s+(\\d{1,2})\\s+(\\d{1,2}) "
                    + "([EW])\\s+(\\d{1,3})\\s+(\\d{1,2})\\s+(-?\\d{1,4})\\s*$");
    private static final int LINE = 142;

    private Tmy2() {}

    static Optional<Recognised> in(TextHead head) {
        Matcher station = STATION.matcher(head.line(0));
        if (!station.matches() || head.line(1).stripTrailing().length() < LINE - 20) {
            return Optional.empty();
        }
        Layout layout = new Layout(
                new Layout.Text(1, false, Layout.Text.WHOLE_LINE, '.'),
                new Layout.Time(
                        List.of(position(2, 3), position(4, 5), position(6, 7), position(8, 9)),
                        new TimeForm("YY M D h"),
                        Stamp.HOUR_END,
                        Layout.Clock.LOCAL,
                        true),
                columns(),
                Set.of(),
                new Layout.SiteSource(
                        Layout.Source.of(station.group(2).strip().replace('_', ' ') + " " + station.group(3)),
                        Layout.Source.of(degrees(station, 5, "S")),
                        Layout.Source.of(degrees(station, 8, "W")),
                        Layout.Source.of(station.group(11)),
                        Layout.Source.of(station.group(4).replaceAll("[\\s+]", ""))));
        return Optional.of(new Recognised(
                "a typical year in the TMY2 layout",
                "a row's time is the end of its hour, local standard time",
                layout));
    }

    private static Map<Quantity, Layout.Column> columns() {
        Map<Quantity, Layout.Column> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.GLOBAL, column(18, 21, 1));
        columns.put(Quantity.BEAM, column(24, 27, 1));
        columns.put(Quantity.DIFFUSE, column(30, 33, 1));
        columns.put(Quantity.CLOUD, column(60, 61, 0.1));
        columns.put(Quantity.AIR, column(68, 71, 0.1));
        columns.put(Quantity.DEW_POINT, column(74, 77, 0.1));
        columns.put(Quantity.RELATIVE_HUMIDITY, column(80, 82, 0.01));
        columns.put(Quantity.PRESSURE, column(85, 88, 1));
        columns.put(Quantity.WIND, column(96, 98, 0.1));
        return columns;
    }

    /** Nines over the whole width mean no value. */
    private static Layout.Column column(int from, int to, double factor) {
        return new Layout.Column(List.of(position(from, to)), factor, 0, Set.of("9".repeat(to - from + 1)));
    }

    private static Layout.Place position(int from, int to) {
        return new Layout.ByPosition(from, to);
    }

    /** Degrees from a letter, whole degrees and minutes in three groups. */
    private static String degrees(Matcher station, int group, String negative) {
        double size = Integer.parseInt(station.group(group + 1)) + Integer.parseInt(station.group(group + 2)) / 60.0;
        return Double.toString(station.group(group).equals(negative) ? -size : size);
    }
}
