package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** When the beam of a low sun counts. */
class SunHourTest {

    @Test
    void beamCountsFromTheLeastElevation() {
        assertTrue(new SunHour(1, 89, 90, 1361).beamCounts(), "exactly 1 degree");
        assertFalse(new SunHour(1, 89.001, 90, 1361).beamCounts());
        assertFalse(new SunHour(0, 45, 90, 1361).beamCounts(), "an hour without sun");
        assertTrue(new SunHour(1, 85, 90, 1361, 5).beamCounts());
        assertFalse(new SunHour(1, 86, 90, 1361, 5).beamCounts());
        assertTrue(new SunHour(1, 89.9, 90, 1361, 0).beamCounts());
        assertEquals(SunHour.LEAST_BEAM_ELEVATION_DEG, SunHour.DARK.leastBeamElevationDeg());
    }
}
