package org.warmvat.weather.service;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.layout.Layout;
import org.warmvat.weather.layout.LineCells;
import org.warmvat.weather.layout.TimeForm;

/**
 * Hourly values of NASA's POWER project as CSV, by its page "Hourly API": means of hours, in universal time or in "local solar time", which
 * is a clock of whole hours by the bands of 15 degrees of longitude; -999 for a missing value.
 */
final class NasaPower {
    private static final String LATITUDE = "(?i)^Location:.*latitude\\s+(-?[0-9]+(?:[.,][0-9]+)?)";
    private static final String LONGITUDE = "(?i)^Location:.*longitude\\s+(-?[0-9]+(?:[.,][0-9]+)?)";
    private static final String ELEVATION = "(?i)^elevation.*=\\s*(-?[0-9]+(?:[.,][0-9]+)?)";

    private NasaPower() {}

    static Optional<Recognised> in(TextHead head) {
        Optional<Integer> end = head.first("-END HEADER-");
        boolean like = head.line(0).startsWith("-BEGIN HEADER-")
                && head.lines().stream().anyMatch(line -> line.contains("POWER"))
                && end.isPresent()
                && head.line(end.get() + 1).startsWith("YEAR,MO,DY,HR");
        if (!like) {
            return Optional.empty();
        }
        boolean universal = head.lines().stream().limit(end.get()).anyMatch(line -> line.matches("(?i).*\\bUTC\\b.*"));
        int offset = (int) Math.round(head.number(LONGITUDE).orElse(0.0) / 15);
        List<String> names = LineCells.of(head.line(end.get() + 1), ',');
        Layout layout = new Layout(
                new Layout.Text(end.get() + 1, true, ',', '.'),
                new Layout.Time(
                        List.of(
                                new Layout.ByHeading("YEAR"),
                                new Layout.ByHeading("MO"),
                                new Layout.ByHeading("DY"),
                                new Layout.ByHeading("HR")),
                        new TimeForm("YYYY M D h"),
                        Stamp.HOUR_START,
                        universal ? Layout.Clock.UTC : Layout.Clock.LOCAL,
                        false),
                columns(names, head),
                Set.of("-999"),
                site(offset));
        return Optional.of(new Recognised(
                "hourly values of NASA POWER",
                String.format(
                        Locale.ROOT,
                        "a row is the mean of the hour that begins at its time; times are %s, and local standard time was taken as UTC%+d h by"
                                + " the longitude",
                        universal ? "universal" : "those of bands of 15° of longitude",
                        offset),
                layout));
    }

    private static Map<Quantity, Layout.Column> columns(List<String> names, TextHead head) {
        return new Columns(names)
                .must(Quantity.AIR, "T2M")
                .must(Quantity.GLOBAL, "ALLSKY_SFC_SW_DWN", wattsOf("ALLSKY_SFC_SW_DWN", head))
                .may(Quantity.BEAM, "ALLSKY_SFC_SW_DNI", wattsOf("ALLSKY_SFC_SW_DNI", head))
                .may(Quantity.DIFFUSE, "ALLSKY_SFC_SW_DIFF", wattsOf("ALLSKY_SFC_SW_DIFF", head))
                .may(Quantity.LONGWAVE, "ALLSKY_SFC_LW_DWN", wattsOf("ALLSKY_SFC_LW_DWN", head))
                .may(Quantity.DEW_POINT, "T2MDEW")
                .may(Quantity.RELATIVE_HUMIDITY, "RH2M", 0.01)
                .may(Quantity.WIND, "WS10M")
                .may(Quantity.PRESSURE, "PS", 10)
                .may(Quantity.CLOUD, "CLOUD_AMT", 0.01)
                .map();
    }

    /** The unit stands in the head behind the column's meaning: W/m^2 or Wh/m^2, for farmers MJ/hr on a square metre. */
    private static double wattsOf(String name, TextHead head) {
        return head.lines().stream().anyMatch(line -> line.startsWith(name + " ") && line.contains("(MJ/hr)"))
                ? 1e6 / 3600
                : 1;
    }

    private static Layout.SiteSource site(int offset) {
        return new Layout.SiteSource(
                Layout.Source.of("NASA POWER"),
                Layout.Source.found(LATITUDE),
                Layout.Source.found(LONGITUDE),
                Layout.Source.found(ELEVATION),
                Layout.Source.of(Integer.toString(offset)));
    }
}
