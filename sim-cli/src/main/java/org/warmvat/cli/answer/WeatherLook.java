package org.warmvat.cli.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.warmvat.weather.MonthSummary;
import org.warmvat.weather.Weather;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;

/**
 * What a weather file holds, in lines and as JSON.
 *
 * @param weather the weather
 * @param months its months
 * @param suspicions what is suspicious about it
 */
public record WeatherLook(Weather weather, List<MonthSummary> months, List<Doubt> suspicions) {

    private static final int BAR_LETTERS_PER_KWH = 3;

    /** Looks at a file. */
    public static WeatherLook of(Weather weather) {
        return new WeatherLook(weather, MonthSummary.of(weather), Doubts.of(weather));
    }

    /** Sentences, the monthly table with a bar for the sun of each month, assumptions and suspicions. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "%s: latitude %.2f, longitude %.2f, %.0f m, UTC%+.1f h; times are the %s.",
                weather.site().name(),
                weather.site().latitudeDeg(),
                weather.site().longitudeDeg(),
                weather.site().elevationM(),
                weather.site().utcOffsetH(),
                weather.stamp().key().replace('_', ' ')));
        lines.add(String.format(
                Locale.ROOT,
                "%d hours from %s to %s%s; mean air %.1f °C, mean wind %.1f m/s.",
                weather.hours(),
                weather.start(),
                weather.end(),
                weather.isWholeYear() ? ", whole years" : "",
                weather.meanAirC(),
                weather.meanWindMPerS()));
        lines.add("");
        lines.add("           air temperature °C      sun kWh/m2    wind   humidity   hours");
        lines.add("month      mean  least   most      a day          m/s      %     missing");
        months.forEach(month -> lines.add(row(month)));
        section(lines, "Assumed, filled or changed", weather.assumptions());
        section(lines, "Suspicious", suspicions.stream().map(Doubt::sentence).toList());
        return lines;
    }

    private static String row(MonthSummary month) {
        int letters = (int) Math.round(BAR_LETTERS_PER_KWH * month.globalKWhPerM2Day());
        return String.format(
                        Locale.ROOT,
                        "%s  %6.1f %6.1f %6.1f     %5.2f        %5.1f    %3.0f     %5d   %s",
                        month.month(),
                        month.airC().mean(),
                        month.airC().least(),
                        month.airC().most(),
                        month.globalKWhPerM2Day(),
                        month.windMPerS(),
                        100 * month.relativeHumidityFraction(),
                        month.hours().filled(),
                        "#".repeat(Math.max(0, letters)))
                .stripTrailing();
    }

    private static void section(List<String> lines, String heading, List<String> sentences) {
        lines.add("");
        lines.add(heading);
        (sentences.isEmpty() ? List.of("Nothing.") : sentences).forEach(sentence -> lines.add("  " + sentence));
    }

    /** The same as JSON. */
    public byte[] json() {
        return Json.bytes(json -> {
            json.writeStartObject();
            json.writeObjectFieldStart("site");
            json.writeStringField("name", weather.site().name());
            json.writeNumberField("latitude_deg", weather.site().latitudeDeg());
            json.writeNumberField("longitude_deg", weather.site().longitudeDeg());
            json.writeNumberField("elevation_m", weather.site().elevationM());
            json.writeNumberField("utc_offset_h", weather.site().utcOffsetH());
            json.writeEndObject();
            json.writeNumberField("hours", weather.hours());
            json.writeStringField("from", weather.start().toString());
            json.writeStringField("to", weather.end().toString());
            json.writeBooleanField("whole_years", weather.isWholeYear());
            json.writeArrayFieldStart("months");
            for (MonthSummary month : months) {
                write(json, month);
            }
            json.writeEndArray();
            texts(json, "assumed", weather.assumptions());
            json.writeArrayFieldStart("suspicions");
            for (Doubt suspicion : suspicions) {
                json.writeStartObject();
                json.writeStringField("kind", suspicion.kind().name().toLowerCase(Locale.ROOT));
                json.writeStringField("when", suspicion.when());
                json.writeStringField("sentence", suspicion.sentence());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static void write(JsonGenerator json, MonthSummary month) throws IOException {
        json.writeStartObject();
        json.writeStringField("month", month.month().toString());
        json.writeNumberField("mean_air_c", month.airC().mean());
        json.writeNumberField("least_air_c", month.airC().least());
        json.writeNumberField("most_air_c", month.airC().most());
        json.writeNumberField("global_kwh_m2_day", month.globalKWhPerM2Day());
        json.writeNumberField("wind_m_s", month.windMPerS());
        json.writeNumberField("relative_humidity", month.relativeHumidityFraction());
        json.writeNumberField("hours", month.hours().present());
        json.writeNumberField("hours_missing", month.hours().filled());
        json.writeEndObject();
    }

    private static void texts(JsonGenerator json, String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
