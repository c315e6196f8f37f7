package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** Whole, part, several, leap and typical years. */
class YearsTest {
    private static final String NAMES = "time,air_c,global_w_m2\n";

    private static Weather read(String text) throws WeatherRefused {
        return WeatherFiles.parse("year.csv", text);
    }

    private static String from(LocalDateTime firstHour, int hours) {
        return Text.rows(Text.HEADER + NAMES, firstHour.plusHours(1), hours, i -> (i % 24) + ",0");
    }

    @Test
    void aWholeYear() throws WeatherRefused {
        Weather year = read(from(LocalDateTime.of(2023, 7, 1, 0, 0), 8784));
        assertEquals(LocalDateTime.of(2024, 7, 1, 0, 0), year.end());
        assertTrue(year.isWholeYear());
        assertTrue(year.ground().isPresent());
        assertEquals(11.5, year.ground().orElseThrow().meanC(), 1e-3);
    }

    /** A leap year cut after 8760 hours ends a day early: no whole year. */
    @Test
    void aLeapYearShortOfADay() throws WeatherRefused {
        Weather year = read(from(LocalDateTime.of(2024, 1, 1, 0, 0), 8760));
        assertFalse(year.isWholeYear());
        assertTrue(year.ground().isPresent());
        assertTrue(read(from(LocalDateTime.of(2024, 1, 1, 0, 0), 8784)).isWholeYear());
    }

    @Test
    void severalYearsKeepTheirLeapDays() throws WeatherRefused {
        Weather years = read(from(LocalDateTime.of(2023, 1, 1, 0, 0), 8760 + 8784 + 8760));
        assertEquals(LocalDateTime.of(2026, 1, 1, 0, 0), years.end());
        assertTrue(years.isWholeYear());
        assertEquals(59.5, years.dayOfYear(3600.0 * (8760 + 24 * 59 + 12)), 1e-9);
        assertEquals(0.25, years.dayOfYear(3600.0 * (8760 + 8784 + 6)), 1e-9);
    }

    @Test
    void aPartYearHasNoGroundOfItsOwn() throws WeatherRefused {
        Weather spring = read(from(LocalDateTime.of(2025, 3, 1, 0, 0), 2208));
        assertFalse(spring.isWholeYear());
        assertTrue(spring.ground().isEmpty());
        assertEquals(59, spring.dayOfYear(0));
    }

    /** January of 1988, February of 1981, March of 1995 and so on become 2025. */
    @Test
    void monthsOfDifferentYearsAreLaidOntoOne() throws WeatherRefused {
        int[] years = {1988, 1981, 1995, 1980, 1980, 2001, 1999, 1977, 1988, 1990, 2003, 1979};
        StringBuilder text = new StringBuilder(Text.HEADER + NAMES);
        for (int month = 1; month <= 12; month++) {
            LocalDateTime hour = LocalDateTime.of(years[month - 1], month, 1, 1, 0);
            int days = month == 2 ? 28 : hour.toLocalDate().lengthOfMonth();
            text.append(Text.rows("", hour, 24 * days, i -> "4,0"));
        }
        Weather year = read(text.toString());
        assertEquals(8760, year.hours());
        assertEquals(LocalDateTime.of(2025, 1, 1, 0, 0), year.start());
        assertTrue(year.isWholeYear());
        assertEquals(
                "The weather is a typical year whose months come from different years: it was laid onto 2025.",
                year.assumptions().get(0));
    }

    @Test
    void theLeapDayOfATypicalYearIsDropped() throws WeatherRefused {
        String text = Text.rows(Text.HEADER + NAMES, LocalDateTime.of(1988, 2, 1, 1, 0), 24 * 29, i -> "4,0")
                + Text.rows("", LocalDateTime.of(1981, 3, 1, 1, 0), 24 * 31, i -> "5,0");
        Weather part = read(text);
        assertEquals(24 * 59, part.hours());
        assertEquals(
                "The weather is a typical year whose months come from different years: it was laid onto 2025, and 24 hours of"
                        + " 29 February were dropped.",
                part.assumptions().get(0));
        assertEquals(5, part.airC().value(24 * 28));
    }

    @Test
    void aWinterAcrossTheNewYearOfTypicalMonths() throws WeatherRefused {
        String text = Text.rows(Text.HEADER + NAMES, LocalDateTime.of(1999, 12, 1, 1, 0), 24 * 31, i -> "4,0")
                + Text.rows("", LocalDateTime.of(1981, 1, 1, 1, 0), 24 * 31, i -> "5,0");
        Weather winter = read(text);
        assertEquals(LocalDateTime.of(2025, 12, 1, 0, 0), winter.start());
        assertEquals(LocalDateTime.of(2026, 2, 1, 0, 0), winter.end());
    }

    @Test
    void shuffledRowsAreNoTypicalYear() {
        String text = from(LocalDateTime.of(2025, 1, 1, 0, 0), 48);
        String[] lines = text.split("\n");
        String moved = Text.withLine(Text.withLine(text, 20, lines[29]), 30, lines[19]);
        List<String> faults =
                assertThrows(WeatherRefused.class, () -> read(moved)).faults();
        assertEquals(
                "year.csv line 20: time 2025-01-01T22:00 comes after a gap of 10 hours, expected rows for every hour (up to"
                        + " 6 missing ones are filled; more by --fill-holes HOURS)",
                faults.get(0));
    }
}
