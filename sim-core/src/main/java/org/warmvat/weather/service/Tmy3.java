package org.warmvat.weather.service;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.LineCells;
import org.warmvat.weather.layout.TimeForm;

/**
 * Typical years as described by S. Wilcox and W. Marion (2008), "Users manual for TMY3 data sets", NREL/TP-581-43156, as published and as
 * saved again by a spreadsheet: stamps at the end of the hour in local standard time, radiation of the hour before the label, other
 * values at the label, -9900 for a missing value.
 */
final class Tmy3 {
    private static final String DATE = "Date (MM/DD/YYYY)";
    private static final String TIME = "Time (HH:MM)";
    /** As published, and as spreadsheets of other settings write the date; years do not count in a typical year. */
    private static final List<String> FORMS =
            List.of("MM/DD/YYYY hh:mm", "MM/DD/YY hh:mm", "YYYY-MM-DD hh:mm", "DD.MM.YYYY hh:mm");

    private Tmy3() {}

    static Optional<Recognised> in(TextHead head) {
        List<String> names = LineCells.of(head.line(1), ',');
        if (!names.get(0).equals(DATE) || !names.contains(TIME)) {
            return Optional.empty();
        }
        List<String> station = LineCells.of(head.line(0), ',');
        String name = station.size() < 3 ? "unnamed site" : station.get(1) + " " + station.get(2);
        Layout layout = new Layout(
                new Layout.Text(1, true, ',', '.'),
                new Layout.Time(
                        List.of(new Layout.ByHeading(DATE), new Layout.ByHeading(TIME)),
                        form(LineCells.of(head.line(2), ','), names.indexOf(TIME)),
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

    private static TimeForm form(List<String> row, int time) {
        String first = row.get(0) + " " + (time < row.size() ? row.get(time) : "");
        return FORMS.stream()
                .map(TimeForm::new)
                .filter(form -> form.minutes(first).isPresent())
                .findFirst()
                .orElse(new TimeForm(FORMS.get(0)));
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
