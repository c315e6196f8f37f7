package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.sample.InventedWeather;

/** A file of many years cut into years. */
class WeatherYearTest {
    private static Weather hours(LocalDateTime start, int hours) {
        return InventedWeather.steadyFrom(start, 5, hours);
    }

    @Test
    void wholeYearsByTheirNumbersAndTheRestLeftOut() {
        Weather weather = hours(LocalDateTime.of(2023, 1, 1, 0, 0), 8760 + 8784 + 8760 + 100);
        List<WeatherYear> years = WeatherYear.of("long.csv", weather);
        assertEquals(
                List.of("long.csv 2023", "long.csv 2024", "long.csv 2025"),
                years.stream().map(WeatherYear::name).toList());
        assertEquals(8784, years.get(1).weather().hours());
        assertEquals(LocalDateTime.of(2024, 1, 1, 0, 0), years.get(1).weather().start());
    }

    @Test
    void yearsThatBeginInAnotherMonthAreNamedByTheirFirstDay() {
        Weather weather = hours(LocalDateTime.of(2022, 10, 1, 0, 0), 2 * 8760);
        assertEquals(
                List.of("w.csv from 2022-10-01", "w.csv from 2023-10-01"),
                WeatherYear.of("w.csv", hours(LocalDateTime.of(2022, 10, 1, 0, 0), 8760 + 8784)).stream()
                        .map(WeatherYear::name)
                        .toList());
        // one day short of the second year, which has a leap day
        assertEquals(1, WeatherYear.of("w.csv", weather).size());
    }

    /** A file moved by its clock begins in the evening before: its years are still those of the calendar. */
    @Test
    void aFewHoursAboutNewYearDoNotMatter() {
        Weather weather = hours(LocalDateTime.of(2022, 12, 31, 19, 0), 2 * 8760);
        assertEquals(
                List.of("w.csv 2023", "w.csv 2024"),
                WeatherYear.of("w.csv", hours(LocalDateTime.of(2022, 12, 31, 19, 0), 8760 + 8784)).stream()
                        .map(WeatherYear::name)
                        .toList());
        assertSame(weather, WeatherYear.of("w.csv", weather).get(0).weather());
    }
}
