package org.warmvat.question.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.log.Log;
import org.warmvat.log.LogFiles;
import org.warmvat.sample.InventedWeather;
import org.warmvat.weather.Weather;

/** Exact: along a log the weather is the log's where it has some, the file's in its holes. */
class LogWeatherTest {

    private static final Weather FILE = InventedWeather.days(50, 6);
    private static final LocalDateTime START = FILE.start().plusDays(2);

    /** Hourly over two days, with nothing of the weather from 10 to 30 hours after the first row. */
    private static Log log() throws Exception {
        StringBuilder text = new StringBuilder("time,slurry_c,air_c,wind_m_s,global_w_m2\n");
        for (int hour = 0; hour <= 48; hour++) {
            boolean hole = hour > 10 && hour < 30;
            text.append(String.format(
                    Locale.ROOT, "%s,%d,%s\n", START.plusHours(hour), 60 - hour, hole ? ",," : "-40,50,1234"));
        }
        return LogFiles.read(
                List.of(new LogFiles.Source("log.csv", text.toString())), Optional.empty(), Optional.empty());
    }

    /** The envelope starts steady in the dark, with the first air and wind of the log. */
    @Test
    void theHourOfTheStartIsDarkAndHasTheFirstAir() throws Exception {
        Log log = log();
        Weather weather = LogWeather.of(log, Optional.of(FileAlong.of(FILE, log)), Optional.empty());
        assertEquals(0, weather.globalWPerM2(0), 0);
        assertEquals(-40, weather.airC().at(3600), 1e-9);
        assertEquals(50, weather.windMPerS().at(3600), 1e-9);
    }

    @Test
    void holesOfTheLogAreTheFiles() throws Exception {
        Log log = log();
        FileAlong along = FileAlong.of(FILE, log);
        Weather weather = LogWeather.of(log, Optional.of(along), Optional.empty());
        for (int hour = 0; hour < 48; hour++) {
            int ofLog = LogHours.FIRST + hour;
            int ofFile = 48 + hour;
            boolean hole = hour >= 10 && hour < 29;
            assertEquals(
                    hole ? FILE.globalWPerM2(ofFile) : 1234, weather.globalWPerM2(ofLog), 1e-9, "sun, hour " + hour);
            double endS = (ofLog + 1) * 3600.0;
            boolean atRow = !(hour + 1 > 10 && hour + 1 < 30);
            double fileS = (ofFile + 1) * 3600.0;
            assertEquals(atRow ? -40 : FILE.airC().at(fileS), weather.airC().at(endS), 1e-9, "air, hour " + hour);
            assertEquals(
                    atRow ? 50 : FILE.windMPerS().at(fileS), weather.windMPerS().at(endS), 1e-9, "wind, hour " + hour);
        }
    }
}
