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

/** The typical year of PVGIS as CSV: temperatures at the stamp, irradiance of an instant a stated part of an hour after it. */
final class PvgisTypicalYear {
    private PvgisTypicalYear() {}

    static Optional<Recognised> in(TextHead head) {
        Optional<Integer> heading = head.first("time(UTC),");
        if (!Pvgis.isLike(head) || heading.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> offsetH = head.number("^Irradiance Time Offset \\(h\\):\\s*(-?[0-9.]+)");
        double instant = 60 * offsetH.orElse(0.0);
        List<String> names = LineCells.of(head.line(heading.get()), ',');
        Layout layout = new Layout(
                Pvgis.text(heading.get()),
                new Layout.Time(
                        List.of(new Layout.ByHeading("time(UTC)")),
                        new TimeForm("YYYYMMDD:hhmm"),
                        Stamp.HOUR_START,
                        Layout.Clock.UTC,
                        true,
                        60,
                        OptionalDouble.of(instant)),
                new Columns(names)
                        .must(Quantity.AIR, "T2m")
                        .must(Quantity.GLOBAL, "G(h)")
                        .may(Quantity.BEAM, "Gb(n)")
                        .may(Quantity.DIFFUSE, "Gd(h)")
                        .may(Quantity.LONGWAVE, "IR(h)")
                        .may(Quantity.RELATIVE_HUMIDITY, "RH", 0.01)
                        .may(Quantity.WIND, "WS10m")
                        .may(Quantity.PRESSURE, "SP", 0.01)
                        .map(),
                Set.of(),
                Pvgis.site(head));
        return Optional.of(new Recognised(
                "a typical year of PVGIS",
                Pvgis.times(
                        offsetH.isPresent()
                                ? Pvgis.after(instant)
                                : "taken as the full hour, since the file has no line \"Irradiance Time Offset (h)\"",
                        head),
                layout));
    }
}
