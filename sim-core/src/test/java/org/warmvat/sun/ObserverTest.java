package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an observer refuses. */
class ObserverTest {

    @ParameterizedTest
    @CsvSource({
        "90.1, 0, 0, 1013, 10, 1, latitude out of range: 90.1",
        "-91, 0, 0, 1013, 10, 1, latitude out of range: -91.0",
        "0, 181, 0, 1013, 10, 1, longitude out of range: 181.0",
        "0, 0, -500, 1013, 10, 1, elevation out of range: -500.0",
        "0, 0, 9000, 1013, 10, 1, elevation out of range: 9000.0",
        "0, 0, 0, 0, 10, 1, pressure out of range: 0.0",
        "0, 0, 0, 2000, 10, 1, pressure out of range: 2000.0",
        "0, 0, 0, 1013, -273, 1, temperature out of range: -273.0",
        "0, 0, 0, 1013, 100, 1, temperature out of range: 100.0",
        "0, 0, 0, 1013, 10, -0.1, least elevation of beam out of range: -0.1",
        "0, 0, 0, 1013, 10, 10.1, least elevation of beam out of range: 10.1"
    })
    void refuses(
            double latitude,
            double longitude,
            double elevation,
            double pressure,
            double temperature,
            double least,
            String message) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> new Observer(latitude, longitude, elevation, pressure, temperature, least));
        assertEquals(message, refused.getMessage());
    }

    @Test
    void takesThePolesAndTheDateLine() {
        assertEquals(-90, new Observer(-90, 180, -499, 1, -272, 0).latitudeDeg());
        assertEquals(90, new Observer(90, -180, 8999, 1999, 99, 10).latitudeDeg());
        assertEquals(SunHour.LEAST_BEAM_ELEVATION_DEG, new Observer(0, 0, 0, 1013, 10).leastBeamElevationDeg());
    }
}
