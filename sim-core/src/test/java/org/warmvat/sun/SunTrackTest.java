package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** Exact: properties of the sun's hours that hold whatever the algorithm. */
class SunTrackTest {
    private static final LocalDateTime NEW_YEAR = LocalDateTime.of(2025, 1, 1, 0, 0);

    private static Observer at(double latitudeDeg, double longitudeDeg) {
        return new Observer(latitudeDeg, longitudeDeg, 100, 1000, 10);
    }

    /** The sunlit share of every hour against counting seconds of the full algorithm; the step is 30 s. */
    @Test
    void sunlitShareAgreesWithCountingThroughTheYear() {
        for (double latitude : new double[] {53.1, -42, 0, 66.4, 80}) {
            Observer place = at(latitude, 11);
            SunPosition exact = new SunPosition(place, NEW_YEAR.toLocalDate());
            for (int month = 1; month <= 12; month += 3) {
                LocalDateTime day = LocalDate.of(2025, month, 14).atStartOfDay();
                SunHour[] hours = SunTrack.over(place, day, 1, 24);
                for (int hour = 0; hour < 24; hour++) {
                    double from = day.plusHours(hour).toEpochSecond(ZoneOffset.ofHours(1));
                    assertEquals(countedShare(exact, from), hours[hour].sunlitFraction(), 0.01, latitude + " " + day);
                }
            }
        }
    }

    private static double countedShare(SunPosition exact, double from) {
        int up = 0;
        for (int i = 0; i < 120; i++) {
            up += exact.elevationDeg(from + 30 * i + 15) > 0 ? 1 : 0;
        }
        return up / 120.0;
    }

    @Test
    void thePositionIsThatOfTheMiddleOfTheSunlitPart() {
        Observer place = at(53.1, -2.4);
        SunPosition exact = new SunPosition(place, NEW_YEAR.toLocalDate());
        SunHour[] day = SunTrack.over(place, NEW_YEAR, 0, 24);
        double sunrise = 9 * 3600 - 3600 * day[8].sunlitFraction();
        double epoch = NEW_YEAR.toEpochSecond(ZoneOffset.UTC);
        assertEquals(0, exact.elevationDeg(epoch + sunrise), 1e-5);
        assertEquals(exact.elevationDeg(epoch + (sunrise + 9 * 3600) / 2), day[8].elevationDeg(), 1e-6);
        assertEquals(exact.elevationDeg(epoch + 12.5 * 3600), day[12].elevationDeg(), 1e-9);
    }

    /**
     * Just outside the polar circle near midsummer the sun dips under the horizon around midnight for part of an hour; at 7.5
     * west of the clock's meridian that falls into the middle of one.
     */
    @Test
    void anHourWithTwoCrossingsCountsBothEnds() {
        int found = 0;
        SunHour[] year = SunTrack.over(at(65.9, -7.5), NEW_YEAR, 0, 8760);
        SunPosition exact = new SunPosition(at(65.9, -7.5), NEW_YEAR.toLocalDate());
        double epoch = NEW_YEAR.toEpochSecond(ZoneOffset.UTC);
        for (int hour = 24 * 150; hour < 24 * 200; hour++) {
            double from = epoch + 3600.0 * hour;
            boolean litAtBothEnds = exact.elevationDeg(from) > 0 && exact.elevationDeg(from + 3600) > 0;
            if (litAtBothEnds && year[hour].sunlitFraction() < 1) {
                assertEquals(countedShare(exact, from), year[hour].sunlitFraction(), 0.02);
                assertTrue(year[hour].elevationDeg() > 0);
                found++;
            }
        }
        assertTrue(found > 0, "no such hour near midsummer");
    }

    @Test
    void polarNightIsDarkAndPolarDayIsWhole() {
        SunHour[] year = SunTrack.over(at(80, 0), NEW_YEAR, 0, 8760);
        for (int hour = 0; hour < 24; hour++) {
            assertEquals(SunHour.DARK, year[hour]);
            assertEquals(1, year[24 * 171 + hour].sunlitFraction());
        }
    }

    /** South of the equator the midday sun stands in the north, and summer is in January. */
    @Test
    void southernSunStandsInTheNorth() {
        SunHour noon = SunTrack.over(at(-42, 0), NEW_YEAR, 0, 24)[12];
        double fromNorth = Math.abs(Math.IEEEremainder(noon.azimuthDeg(), 360));
        assertTrue(fromNorth < 20, "azimuth " + noon.azimuthDeg());
        assertTrue(noon.elevationDeg() > 65);
    }

    /** The same moments named on another clock, or from a place an hour further on the globe. */
    @Test
    void theUtcOffsetMovesTheClockAndNotTheSun() {
        SunHour[] universal = SunTrack.over(at(47, 8), NEW_YEAR, 0, 48);
        SunHour[] local = SunTrack.over(at(47, 8), NEW_YEAR.plusHours(1), 1, 48);
        for (int hour = 0; hour < 48; hour++) {
            assertEquals(universal[hour].zenithDeg(), local[hour].zenithDeg(), 1e-9);
        }
    }

    @Test
    void aPartOfTheYearEqualsThatPartOfTheWhole() {
        SunHour[] year = SunTrack.over(at(53.1, -2.4), NEW_YEAR, 0, 2000);
        SunHour[] part = SunTrack.over(at(53.1, -2.4), NEW_YEAR.plusHours(1000), 0, 1000);
        for (int hour = 0; hour < 1000; hour++) {
            assertEquals(year[1000 + hour].zenithDeg(), part[hour].zenithDeg(), 1e-6);
            assertEquals(year[1000 + hour].sunlitFraction(), part[hour].sunlitFraction(), 1e-5);
        }
    }

    @Test
    void repeatsBitForBit() {
        assertArrayEquals(
                SunTrack.over(at(53.1, -2.4), NEW_YEAR, 0, 3000), SunTrack.over(at(53.1, -2.4), NEW_YEAR, 0, 3000));
    }
}
