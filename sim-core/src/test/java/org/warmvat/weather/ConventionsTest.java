package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.warmvat.weather.file.WeatherFiles;

/** Other conventions than the usual ones reach the weather, and the usual ones change nothing. */
class ConventionsTest {

    /** Two June hours without wind, humidity or cloud; the first at dawn, the second at noon. */
    private static Weather bare() throws WeatherRefused {
        return WeatherFiles.parse("bare.csv", """
                # warmvat weather 1
                # site: Nowhere (invented)
                # latitude_deg: 53
                # longitude_deg: 0
                # elevation_m: 0
                # utc_offset_h: 0
                # stamp: hour_end
                time,air_c,beam_w_m2,diffuse_w_m2
                2025-06-01T12:00,15,500,200
                2025-06-01T13:00,15,500,200
                """);
    }

    @Test
    void theUsualOnesAreTheWeatherItself() throws WeatherRefused {
        Weather weather = bare();
        assertSame(weather, weather.under(Conventions.USUAL));
        assertSame(weather, weather.under(new Conventions(3, 0.75, 0.5, 0.8, 10, 1)));
    }

    @Test
    void absentColumnsTakeTheGivenValuesAndSaySo() throws WeatherRefused {
        Weather weather = bare().under(new Conventions(5, 0.6, 0.25, 0.8, 10, 1));
        assertEquals(5, weather.windMPerS().at(0));
        assertEquals(Humidity.dewPointC(15, 0.6), weather.dewPointC().at(0), 1e-12);
        assertTrue(weather.assumptions().contains("The weather file has no wind: 5 m/s at 10 m was assumed."));
        assertTrue(weather.assumptions()
                .contains("The weather file has no humidity: a relative humidity of 0.6 was assumed."));
        assertTrue(weather.assumptions()
                .contains("The weather file has neither long-wave irradiance nor cloud: a cloud fraction of 0.25 was"
                        + " assumed for the sky temperature."));
        assertEquals(3, bare().windMPerS().at(0), "the file itself is not changed");
    }

    @Test
    void cloudFactorWarmsTheSky() throws WeatherRefused {
        Weather clear = bare().under(new Conventions(3, 0.75, 0.5, 0, 10, 1));
        Weather closed = bare().under(new Conventions(3, 0.75, 1, 1, 10, 1));
        double emissivity = SkyTemperature.clearEmissivity(Humidity.dewPointC(15, 0.75), 12, clear.pressureHPa(0));
        assertEquals(SkyTemperature.ofEmissivityC(emissivity, 15), clear.skyC(0, 3600), 1e-9, "no cloud counted");
        assertEquals(15, closed.skyC(0, 3600), 1e-9, "a closed sky is as warm as the air");
    }

    @Test
    void sunKnowsItsLeastElevationAndItsAir() throws WeatherRefused {
        Weather strict = bare().under(new Conventions(3, 0.75, 0.5, 0.8, 10, 10));
        assertEquals(10, strict.sun(0).leastBeamElevationDeg());
        assertEquals(1, bare().sun(0).leastBeamElevationDeg());
        Weather cold = bare().under(new Conventions(3, 0.75, 0.5, 0.8, -40, 1));
        assertNotEquals(bare().sun(0).zenithDeg(), cold.sun(0).zenithDeg(), "colder air bends more");
        assertTrue(cold.sun(0).zenithDeg() < bare().sun(0).zenithDeg());
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertEquals(
                "assumed relative humidity 75, expected 0.01 to 1",
                assertThrows(IllegalArgumentException.class, () -> new Conventions(3, 75, 0.5, 0.8, 10, 1))
                        .getMessage());
    }
}
