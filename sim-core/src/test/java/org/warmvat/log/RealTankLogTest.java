package org.warmvat.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.WeatherRefused;

/** Measured: files of a real logger, with two styles of dates, words for missing values and gaps, are read by a layout. */
class RealTankLogTest {

    @Test
    void theFilesOfARealLoggerAreRead() throws IOException, WeatherRefused {
        Log log = LogFiles.read(RealTankLog.sources(), Optional.of(RealTankLog.LAYOUT), Optional.empty());
        assertEquals(600, log.slurryC().medianStepS(), 2);
        assertEquals(5400, log.slurryC().size());
        assertEquals(
                List.of(
                        "The slurry's readings have 10 gaps of more than three steps, the longest 89.3 h; after each the tank starts"
                                + " afresh.",
                        "air_c is empty over 68.0 h in all: the weather file's stands in where there is one, else what the"
                                + " rows about it say."),
                log.notes());
        SortedMap<LocalDate, Log> nights = RealTankLog.nights();
        assertEquals(37, nights.size());
        nights.values().forEach(night -> assertEquals(66, night.slurryC().size()));
        assertEquals(81.8, nights.get(LocalDate.of(2024, 5, 20)).slurryC().at(0), 1e-9);
    }
}
