package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
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
                List.of(
                        "year.csv line 14: air_c is missing for 7 hours from 2025-01-01T05:00, expected gaps of at most 6 hours (longer ones are"
                                + " filled by --fill-holes HOURS)"),
                assertThrows(WeatherRefused.class, () -> read(cells)).faults());
        String rows = Text.hours("air_c,global_w_m2", 24, i -> cells(i, 0, 0));
        for (int line = 21; line > 14; line--) {
            rows = Text.withLine(rows, line, "");
        }
        String shortened = rows;
        assertEquals(
                List.of(
                        "year.csv line 15: time 2025-01-01T14:00 comes after a gap of 7 hours, expected rows for every hour"
                                + " (up to 6 missing ones are filled; more by --fill-holes HOURS)"),
                assertThrows(WeatherRefused.class, () -> read(shortened)).faults());
    }

    private static Weather filled(String text, int hours) throws WeatherRefused {
        Reading reading = new Reading(Optional.empty(), hours, Reading.USUAL.beside());
        return WeatherFiles.read("year.csv", text.getBytes(StandardCharsets.UTF_8), reading);
    }

    /** Each hour from the same hour of the days around, weighted by nearness; counted and marked. */
    @Test
    void longHolesAreFilledFromNeighbouringDaysWhenAsked() throws WeatherRefused {
        String cells =
                Text.hours("air_c,global_w_m2", 120, i -> (i >= 40 && i < 70 ? "" : 10 + i % 24 + i / 24) + ",0");
        Weather weather = filled(cells, 48);
        // hour 45: 21 the day before is 31, 93 (the next with a value: 45 + 24 = 69 is missing) is 34
        assertEquals(31 + 24.0 / 72 * 3, weather.airC().value(45), 1e-12);
        assertEquals(30, weather.table().filledHours().cardinality());
        assertTrue(weather.assumptions()
                .contains(
                        "30 missing values of air_c were filled from the same hours of the days before and after (--fill-holes 48);"
                                + " the longest hole was 30 h."));
        assertThrows(WeatherRefused.class, () -> filled(cells, 29));
        StringBuilder rows = new StringBuilder();
        cells.lines()
                .filter(line -> !line.contains(",,"))
                .forEach(line -> rows.append(line).append('\n'));
        assertEquals(
                weather.airC().value(45), filled(rows.toString(), 48).airC().value(45));
    }

    @Test
    void holesAtAnEndTakeTheDaysOfTheOtherSide() throws WeatherRefused {
        String cells = Text.hours("air_c,global_w_m2", 96, i -> (i < 20 ? "" : 10 + i % 24) + ",0");
        assertEquals(15, filled(cells, 24).airC().value(5), 1e-12);
        String none = Text.hours("air_c,global_w_m2", 30, i -> (i < 28 ? "" : "3") + ",0");
        assertThrows(WeatherRefused.class, () -> filled(none, 48));
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
