package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.file.Text;
import org.warmvat.weather.file.WeatherFiles;

/** The monthly table of a file. */
class MonthSummaryTest {
    @Test
    void monthsAndPartsOfMonths() throws WeatherRefused {
        String text = Text.rows(
                Text.HEADER + "time,air_c,dew_point_c,wind_m_s,global_w_m2\n",
                LocalDateTime.of(2024, 1, 31, 1, 0),
                48,
                i -> (i < 24 ? (i == 3 ? "" : "2") : "" + (i - 24)) + ",2,5," + (i == 12 ? 240 : 0));
        List<MonthSummary> months = MonthSummary.of(WeatherFiles.parse("w.csv", text));
        assertEquals(2, months.size());
        MonthSummary january = months.get(0);
        assertEquals(YearMonth.of(2024, 1), january.month());
        assertEquals(new MonthSummary.Hours(24, 1), january.hours());
        assertEquals(2, january.airC().mean(), 1e-12);
        assertEquals(0.24, january.globalKWhPerM2Day(), 1e-12);
        assertEquals(5, january.windMPerS(), 1e-12);
        assertEquals(1, january.relativeHumidityFraction(), 1e-12);
        MonthSummary february = months.get(1);
        assertEquals(0, february.airC().least());
        assertEquals(23, february.airC().most());
        assertEquals(11.5, february.airC().mean(), 1e-12);
    }
}
