package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shredzone.commons.suncalc.SunPosition;

/**
 * The sun of whole days against a second library (commons-suncalc, a low-precision algorithm of its own), in both hemispheres and
 * in all seasons. Tolerance 0.05 degrees across the sky: that library claims about a minute of time, our own 0.0003 degrees.
 */
class SunTrackSecondLibraryTest {

    private static final double WITHIN_DEG = 0.05;

    @ParameterizedTest
    @CsvSource({
        "53.1, -2.4, 2025-01-15", "53.1, -2.4, 2025-03-21", "53.1, -2.4, 2025-06-21", "53.1, -2.4, 2025-10-30",
        "-43.5, 172.6, 2025-01-15", "-43.5, 172.6, 2025-06-21", "27.9, 86.9, 2025-05-05", "64.1, -21.9, 2025-07-02"
    })
    void theSunStandsWhereTheOtherOnePutsIt(double latitude, double longitude, String day) {
        Observer observer = new Observer(latitude, longitude, 0, 1013, 10);
        LocalDateTime start = LocalDateTime.parse(day + "T00:00:00");
        SunHour[] hours = SunTrack.over(observer, start, 0, 24);
        for (int hour = 0; hour < 24; hour++) {
            // near the horizon refraction formulas differ, and an hour cut by it is taken at another moment
            if (hours[hour].sunlitFraction() == 1 && hours[hour].elevationDeg() > 5) {
                SunPosition other = SunPosition.compute()
                        .at(latitude, longitude)
                        .on(start.plusHours(hour).plusMinutes(30).atZone(ZoneOffset.UTC))
                        .execute();
                assertEquals(other.getAltitude(), hours[hour].elevationDeg(), WITHIN_DEG);
                double turn = Math.IEEEremainder(other.getAzimuth() - hours[hour].azimuthDeg(), 360);
                assertEquals(0, turn * hours[hour].sinZenith(), WITHIN_DEG);
            }
        }
    }

    /** The sun's distance by that library against Spencer's series: neither is exact, within 0.003. */
    @Test
    void theSunIsAsFarAsTheOtherOneSays() {
        double meanKm = 149_597_870.7;
        for (int day = 1; day <= 365; day += 7) {
            LocalDateTime noon = LocalDateTime.of(2025, 1, 1, 12, 0).plusDays(day - 1L);
            double km = SunPosition.compute()
                    .at(0, 0)
                    .on(noon.atZone(ZoneOffset.UTC))
                    .execute()
                    .getDistance();
            assertEquals(Math.pow(meanKm / km, 2), Extraterrestrial.eccentricity(day), 3e-3, "day " + day);
        }
    }
}
