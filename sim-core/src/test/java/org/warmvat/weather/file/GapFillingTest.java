package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Humidity;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** Gaps of up to six hours are filled and counted; longer ones are refused with their place. */
class GapFillingTest {
    private static Weather read(String text) throws WeatherRefused {
        return WeatherFiles.parse("year.csv", text);
    }

    private static String cells(int hour, int from, int to) {
        return (hour >= from && hour < to ? "" : 10 + hour) + ",0";
    }

    @Test
    void emptyCellsBecomeStraightLines() throws WeatherRefused {
        Weather weather = read(Text.hours("air_c,global_w_m2", 24, i -> cells(i, 5, 11)));
        for (int i = 0; i < 24; i++) {
            assertEquals(10 + i, weather.airC().value(i), 1e-12);
        }
        assertTrue(weather.assumptions()
                .contains("6 missing values of air_c were filled by straight lines; the longest gap was 6 h."));
    }

    @Test
    void missingRowsToo() throws WeatherRefused {
        String text = Text.hours("air_c,global_w_m2", 24, i -> cells(i, 0, 0));
        for (int line = 20; line > 14; line--) {
            text = Text.withLine(text, line, "");
        }
        Weather weather = read(text);
        assertEquals(24, weather.hours());
        assertEquals(16, weather.airC().value(6), 1e-12);
        assertTrue(weather.assumptions()
                .containsAll(List.of(
                        "6 missing values of air_c were filled by straight lines; the longest gap was 6 h.",
                        "6 missing values of global_w_m2 were filled by straight lines (nothing while the sun is down); the"
                                + " longest gap was 6 h.")));
    }

    @Test
    void sevenHoursAreTooMany() {
        String cells = Text.hours("air_c,global_w_m2", 24, i -> cells(i, 5, 12));
        assertEquals(
                List.of("year.csv line 14: air_c is missing for 7 hours from here, expected gaps of at most 6 hours"),
                assertThrows(WeatherRefused.class, () -> read(cells)).faults());
        String rows = Text.hours("air_c,global_w_m2", 24, i -> cells(i, 0, 0));
        for (int line = 21; line > 14; line--) {
            rows = Text.withLine(rows, line, "");
        }
        String shortened = rows;
        assertEquals(
                List.of(
                        "year.csv line 15: time 2025-01-01T14:00 comes after a gap of 7 hours, expected rows for every hour"
                                + " (up to 6 missing ones are filled)"),
                assertThrows(WeatherRefused.class, () -> read(shortened)).faults());
    }

    @Test
    void theEndsTakeTheNearestValue() throws WeatherRefused {
        Weather weather = read(Text.hours("air_c,global_w_m2", 24, i -> cells(i, 0, 3)));
        assertEquals(13, weather.airC().value(0));
        Weather end = read(Text.hours("air_c,global_w_m2", 24, i -> cells(i, 20, 24)));
        assertEquals(29, end.airC().value(23));
    }

    /** Light from noon to a gap over sunset: straight down, but nothing once the sun is down (sunset here near 16:00). */
    @Test
    void irradianceIsNotFilledIntoTheNight() throws WeatherRefused {
        Weather weather = read(Text.hours(
                "air_c,global_w_m2", 24, i -> "5," + (i >= 14 && i < 19 ? "" : i >= 9 && i < 14 ? "60" : "0")));
        assertEquals(50, weather.globalWPerM2(14), 1e-9);
        assertEquals(40, weather.globalWPerM2(15), 1e-9);
        for (int hour = 17; hour < 24; hour++) {
            assertEquals(0, weather.globalWPerM2(hour));
        }
    }

    @Test
    void smallNegativeIrradianceIsSetToNothingAndCounted() throws WeatherRefused {
        Weather weather = read(Text.hours("air_c,global_w_m2", 24, i -> "5," + (i < 7 ? "-2.4" : "0")));
        assertEquals(0, weather.globalWPerM2(3));
        assertTrue(weather.assumptions().contains("7 values of global_w_m2 a few watts below 0 were set to 0."));
    }

    @Test
    void holesOfTheDewPointAreTakenFromHumidity() throws WeatherRefused {
        Weather weather = read(Text.hours(
                "air_c,global_w_m2,dew_point_c,relative_humidity", 24, i -> "5,0," + (i < 12 ? "" : "2") + ",0.6"));
        assertEquals(Humidity.dewPointC(5, 0.6), weather.dewPointC().value(3), 1e-12);
        assertEquals(2, weather.dewPointC().value(13));
        assertTrue(
                weather.assumptions().contains("12 missing values of dew_point_c were taken from relative_humidity."));
    }
}
