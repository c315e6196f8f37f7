package org.warmvat.cli.answer.look;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.warmvat.cli.answer.Columns;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.Draft;
import org.warmvat.cli.answer.Subject;
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

    private static final Columns<MonthSummary> MONTHS = new Columns<MonthSummary>()
            .text("month", "month", month -> month.month().toString())
            .number("mean_air_c", "mean air, °C", month -> month.airC().mean(), Words::tenth)
            .number("least_air_c", "lowest", month -> month.airC().least(), Words::tenth)
            .number("most_air_c", "highest", month -> month.airC().most(), Words::tenth)
            .number(
                    "global_kwh_m2_day",
                    "sun, kWh/m² a day",
                    MonthSummary::globalKWhPerM2Day,
                    sun -> Words.fixed(sun, 2))
            .number("wind_m_s", "wind, m/s", MonthSummary::windMPerS, Words::tenth)
            .number(
                    "relative_humidity",
                    "humidity, %",
                    MonthSummary::relativeHumidityFraction,
                    share -> Words.whole(100 * share))
            .value("hours", month -> month.hours().present())
            .number("hours_missing", "hours missing", month -> month.hours().filled(), Words::whole)
            .cell("sun", LookAnswer::bar);

    private LookAnswer() {}

    /**
     * Tells what a weather file holds.
     *
     * @param asked the weather
     * @param drawn whether a picture is wanted
     */
    public static Document of(Subject asked, boolean drawn) {
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
                .table(MONTHS.table("Month by month", months))
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
                .figure("months", MONTHS.rows(months))
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

    private static String bar(MonthSummary month) {
        return "#".repeat((int) Math.max(0, Math.round(BAR_LETTERS_PER_KWH * month.globalKWhPerM2Day())));
    }

    private static Map<String, Object> suspicion(Doubt doubt) {
        return Draft.row(
                "kind", doubt.kind().name().toLowerCase(Locale.ROOT),
                "when", doubt.when(),
                "sentence", doubt.sentence());
    }
}
