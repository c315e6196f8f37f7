package org.warmvat.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDateTime;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.warmvat.engine.Hours;
import org.warmvat.sample.StudyTank;
import org.warmvat.tank.StudyRefused;
import org.warmvat.weather.Weather;

class WindowTest {

    private static final Weather YEAR = StudyTank.from(LocalDateTime.of(2025, 1, 1, 0, 0), 365, 8, 300);

    @Test
    void liesWithinTheFile() throws StudyRefused {
        Window march = Window.of(YEAR, MonthDay.of(3, 1), MonthDay.of(3, 31));
        assertEquals(new Hours(59 * 24, 90 * 24), march.hours());
        assertEquals(31, march.days());
        assertSame(YEAR, march.weather());
    }

    @Test
    void runsAcrossNewYearOnTheBeginningOfTheFile() throws StudyRefused {
        Window winter = Window.of(YEAR, MonthDay.of(12, 1), MonthDay.of(2, 28));
        assertEquals(LocalDateTime.of(2025, 12, 1, 0, 0), winter.start());
        assertEquals(LocalDateTime.of(2026, 3, 1, 0, 0), winter.end());
        assertEquals(8760 + 59 * 24, winter.weather().hours());
        assertEquals(YEAR.globalWPerM2(12), winter.weather().globalWPerM2(8760 + 12), 1e-9);
    }

    @Test
    void isRefusedOutsideAPartOfAYear() {
        StudyRefused refused = assertThrows(
                StudyRefused.class,
                () -> Window.of(StudyTank.april(30, 8, 300), MonthDay.of(4, 20), MonthDay.of(5, 10)));
        assertEquals(
                "weather: goes from 2025-04-01T00:00 to 2025-05-01T00:00, which does not hold 20 April to 10 May; expected a file"
                        + " that holds all of it, or a whole year",
                refused.getMessage());
    }
}
