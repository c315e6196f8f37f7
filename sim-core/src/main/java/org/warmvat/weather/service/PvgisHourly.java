package org.warmvat.weather.service;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.LineCells;
import org.warmvat.weather.layout.TimeForm;

/**
 * The hourly series of PVGIS as CSV: each row is an instant some minutes after the full hour, irradiance that of a stated plane, which has
 * to be level here.
 */
final class PvgisHourly {
    private PvgisHourly() {}

    static Optional<Recognised> in(TextHead head) {
        Optional<Integer> heading = head.first("time,");
        if (!Pvgis.isLike(head) || heading.isEmpty()) {
            return Optional.empty();
        }
        List<String> names = LineCells.of(head.line(heading.get()), ',');
        Columns columns = new Columns(names).must(Quantity.AIR, "T2m").may(Quantity.WIND, "WS10m");
        if (names.contains("Gb(i)")) {
            columns.sum(Quantity.GLOBAL, List.of("Gb(i)", "Gd(i)", "Gr(i)")).may(Quantity.DIFFUSE, "Gd(i)");
        } else {
            columns.must(Quantity.GLOBAL, "G(i)");
        }
        Layout layout = new Layout(
                Pvgis.text(heading.get()),
                new Layout.Time(
                        List.of(new Layout.ByHeading("time")),
                        new TimeForm("YYYYMMDD:hhmm"),
                        Stamp.HOUR_START,
                        Layout.Clock.UTC,
                        false,
                        60,
                        OptionalDouble.of(0)),
                columns.map(),
                Set.of(),
                Pvgis.site(head));
        double minute = head.number("^[0-9]{8}:[0-9]{2}([0-9]{2}),").orElse(0.0);
        double slope = head.number("^Slope:\\s*(-?[0-9.]+)").orElse(0.0);
        String kind = "an hourly series of PVGIS"
                + (slope == 0
                        ? ""
                        : " for a plane of " + Math.round(slope)
                                + "° (the light on it is not that on the level: ask for slope 0)");
        return Optional.of(new Recognised(kind, Pvgis.times(Pvgis.after(minute), head), layout, slope));
    }
}
