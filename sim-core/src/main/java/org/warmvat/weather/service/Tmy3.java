package org.warmvat.weather.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.TimeForm;

/**
 * Typical years as described by S. Wilcox and W. Marion (2008), "Users manual for TMY3 data sets", NREL/TP-581-43156, as published and as
 * saved again by a spreadsheet: stamps at the end of the hour in local standard time, radiation of the hour before the label, other
 * values at the label, -9900 for a missing value.
 */
final class Tmy3 {
    private static final String DATE = "Date (MM/DD/YYYY)";

    private Tmy3() {}

    static Optional<Recognised> in(TextHead head) {
        char delimiter = head.line(1).contains(";") ? ';' : ',';
        List<String> names = TextHead.names(head.line(1), delimiter);
        if (!names.get(0).equals(DATE)) {
            return Optional.empty();
        }
        boolean commas = delimiter == ';' && head.line(2).matches(".*\\d,\\d.*");
        List<String> station = TextHead.names(head.line(0), delimiter);
        String name = station.size() < 3 ? "unnamed site" : station.get(1) + " " + station.get(2);
        Layout layout = new Layout(
                new Layout.Text(1, true, delimiter, commas ? ',' : '.'),
                new Layout.Time(
                        List.of(new Layout.ByHeading(DATE), new Layout.ByHeading("Time (HH:MM)")),
                        new TimeForm("MM/DD/YYYY hh:mm"),
                        Stamp.HOUR_END,
                        Layout.Clock.LOCAL,
                        true),
                columns(names),
                Set.of("-9900"),
                new Layout.SiteSource(
                        Layout.Source.of(name.strip()),
                        Layout.Source.at(1, 5),
                        Layout.Source.at(1, 6),
                        Layout.Source.at(1, 7),
                        Layout.Source.at(1, 4)));
        return Optional.of(new Recognised(
                "a typical year in the TMY3 layout"
                        + (head.line(2).matches("\\d/.*|\\d\\d?/\\d/.*") ? ", saved again by a spreadsheet" : ""),
                "a row's time is the end of its hour, local standard time",
                layout));
    }

    private static Map<Quantity, Layout.Column> columns(List<String> names) {
        return new Columns(names)
                .must(Quantity.AIR, "Dry-bulb (C)")
                .must(Quantity.GLOBAL, "GHI (W/m^2)")
                .may(Quantity.BEAM, "DNI (W/m^2)")
                .may(Quantity.DIFFUSE, "DHI (W/m^2)")
                .may(Quantity.CLOUD, "TotCld (tenths)", 0.1)
                .may(Quantity.DEW_POINT, "Dew-point (C)")
                .may(Quantity.RELATIVE_HUMIDITY, "RHum (%)", 0.01)
                .may(Quantity.PRESSURE, "Pressure (mbar)")
                .may(Quantity.WIND, "Wspd (m/s)")
                .map();
    }
}
