package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import org.junit.jupiter.api.Test;

/** Against the library: every point of a solar chart is the sun's position that the library gives for its instant. */
class SunPathTest {

    private static final Observer PLACE = new Observer(53.1, -2.4, 120, 1002, 10);

    @Test
    void pointsAreTheLibrarysPositions() {
        LocalDate date = LocalDate.of(2025, 4, 21);
        List<SunPath.Point> path = SunPath.on(PLACE, date, 0, 30);
        for (SunPath.Point point : path) {
            ZonedDateTime at = date.atStartOfDay(ZoneOffset.UTC).plusMinutes(Math.round(60 * point.hourOfDay()));
            var position = SPA.calculateSolarPosition(at, 53.1, -2.4, 120, DeltaT.estimate(date), 1002, 10);
            assertEquals(position.azimuth(), point.azimuthDeg(), 1e-4);
            assertEquals(90 - position.zenithAngle(), point.elevationDeg(), 1e-4);
        }
        assertTrue(path.size() > 25);
    }

    /** 53.1° N: at noon of the solstices 90 - 53.1 ± 23.44; no sun in an arctic December. */
    @Test
    void theChartsHighestPoints() {
        assertEquals(60.34, highest(LocalDate.of(2025, 6, 21)), 0.02);
        assertEquals(13.46 + 0.07, highest(LocalDate.of(2025, 12, 21)), 0.02);
        assertEquals(List.of(), SunPath.on(new Observer(75, 20, 0, 1002, 10), LocalDate.of(2025, 12, 21), 1, 60));
    }

    private static double highest(LocalDate date) {
        return SunPath.on(PLACE, date, 0, 5).stream()
                .mapToDouble(SunPath.Point::elevationDeg)
                .max()
                .orElseThrow();
    }
}
