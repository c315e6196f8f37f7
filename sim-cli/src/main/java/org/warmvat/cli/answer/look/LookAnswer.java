package org.warmvat.cli.answer.look;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.warmvat.cli.answer.Asked;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Table;
import org.warmvat.cli.words.Numerals;
import org.warmvat.cli.words.Words;
import org.warmvat.weather.MonthSummary;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;

/** The answer to {@code weather look}: what a weather file holds. */
public final class LookAnswer {

    private static final int BAR_LETTERS_PER_KWH = 3;

    private LookAnswer() {}

    /**
     * Tells what a weather file holds.
     *
     * @param asked the weather
     * @param drawn whether a picture is wanted
     */
    public static Document of(Asked asked, boolean drawn) {
        Weather weather = asked.weather();
        Site site = weather.site();
        List<MonthSummary> months = MonthSummary.of(weather);
        List<Doubt> doubts = Doubts.of(weather);
        return Draft.of(asked, "what the weather file holds")
                .verdict(
                        doubts.isEmpty()
                                ? "Nothing in the file is suspicious."
                                : "The file is suspicious: look at it before you trust an answer made from it.",
                        List.of())
                .paragraph("Site and hours", List.of(place(weather), hours(weather)))
                .table(table(months))
                .figure(
                        "site",
                        Draft.row(
                                "name", site.name(),
                                "latitude_deg", site.latitudeDeg(),
                                "longitude_deg", site.longitudeDeg(),
                                "elevation_m", site.elevationM(),
                                "utc_offset_h", site.utcOffsetH()))
                .figure("hours", weather.hours())
                .figure("from", weather.start())
                .figure("to", weather.end())
                .figure("whole_years", weather.isWholeYear())
                .figure("months", months.stream().map(LookAnswer::month).toList())
                .figure("suspicions", doubts.stream().map(LookAnswer::suspicion).toList())
                .pictures(() -> drawn ? List.of(WeatherPicture.of(weather)) : List.of())
                .done();
    }

    private static String place(Weather weather) {
        Site site = weather.site();
        return String.format(
                Locale.ROOT,
                "Latitude %.2f, longitude %.2f, %.0f m above the sea, UTC%s; times stand for the %s of the hour.",
                site.latitudeDeg(),
                site.longitudeDeg(),
                site.elevationM(),
                (site.utcOffsetH() < 0 ? "-" : "+") + Numerals.exact(Math.abs(site.utcOffsetH())),
                weather.stamp().key().replace("hour_", ""));
    }

    private static String hours(Weather weather) {
        return weather.hours() + " hours from " + weather.start() + " to " + weather.end()
                + (weather.isWholeYear() ? ", whole years" : "") + "; mean air " + Words.celsius(weather.meanAirC())
                + ", mean wind " + Words.number(weather.meanWindMPerS()) + " m/s.";
    }

    private static Table table(List<MonthSummary> months) {
        return new Table(
                "Month by month",
                List.of(
                        "month",
                        "mean air, °C",
                        "lowest",
                        "highest",
                        "sun, kWh/m² a day",
                        "wind, m/s",
                        "humidity, %",
                        "hours missing",
                        "sun"),
                months.stream()
                        .map(month -> List.of(
                                month.month().toString(),
                                Words.fixed(month.airC().mean(), 1),
                                Words.fixed(month.airC().least(), 1),
                                Words.fixed(month.airC().most(), 1),
                                Words.fixed(month.globalKWhPerM2Day(), 2),
                                Words.fixed(month.windMPerS(), 1),
                                Words.fixed(100 * month.relativeHumidityFraction(), 0),
                                Numerals.exact(month.hours().filled()),
                                bar(month)))
                        .toList());
    }

    private static String bar(MonthSummary month) {
        return "#".repeat((int) Math.max(0, Math.round(BAR_LETTERS_PER_KWH * month.globalKWhPerM2Day())));
    }

    private static Map<String, Object> month(MonthSummary month) {
        return Draft.row(
                "month", month.month().toString(),
                "mean_air_c", month.airC().mean(),
                "least_air_c", month.airC().least(),
                "most_air_c", month.airC().most(),
                "global_kwh_m2_day", month.globalKWhPerM2Day(),
                "wind_m_s", month.windMPerS(),
                "relative_humidity", month.relativeHumidityFraction(),
                "hours", month.hours().present(),
                "hours_missing", month.hours().filled());
    }

    private static Map<String, Object> suspicion(Doubt doubt) {
        return Draft.row(
                "kind", doubt.kind().name().toLowerCase(Locale.ROOT),
                "when", doubt.when(),
                "sentence", doubt.sentence());
    }
}
