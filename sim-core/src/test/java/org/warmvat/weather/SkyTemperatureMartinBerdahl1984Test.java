package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Published: M. Martin and P. Berdahl, Solar Energy 33 (1984) 321-336, and P. Berdahl and M. Martin, Solar Energy 32 (1984)
 * 663; the table is recomputed from the emissivity as quoted in many public places, without its hour and pressure terms.
 */
class SkyTemperatureMartinBerdahl1984Test {
    /** At 06:00 and 1000 hPa the two correction terms vanish. Air, dew point, emissivity, sky temperature. */
    @Test
    void clearSkies() {
        check(20, 10, 0.7743, 1.84);
        check(0, -5, 0.6848, -24.67);
        check(30, 20, 0.8522, 18.12);
        check(-10, -15, 0.6434, -37.47);
    }

    private static void check(double air, double dewPoint, double emissivity, double sky) {
        double clear = SkyTemperature.clearEmissivity(dewPoint, 6, 1000);
        assertEquals(emissivity, clear, 5e-5);
        assertEquals(sky, SkyTemperature.ofEmissivityC(clear, air), 5e-3);
    }

    @Test
    void hourAndPressureTerms() {
        double still = SkyTemperature.clearEmissivity(10, 6, 1000);
        assertEquals(still + 0.013, SkyTemperature.clearEmissivity(10, 0, 1000), 1e-12);
        assertEquals(still - 0.013, SkyTemperature.clearEmissivity(10, 12, 1000), 1e-12);
        assertEquals(still + 0.0016, SkyTemperature.clearEmissivity(10, 6, 1013.333333), 1e-8);
    }

    @Test
    void cloudClosesFourFifthsOfTheWindow() {
        assertEquals(0.7, SkyTemperature.cloudyEmissivity(0.7, 0, 0.8));
        assertEquals(0.94, SkyTemperature.cloudyEmissivity(0.7, 1, 0.8), 1e-12);
        assertEquals(0.82, SkyTemperature.cloudyEmissivity(0.7, 0.5, 0.8), 1e-12);
        assertEquals(1, SkyTemperature.cloudyEmissivity(1.02, 0.5, 0.8));
    }

    /** A black body of 0 C sends out 315.66 W/m2. */
    @Test
    void longwave() {
        assertEquals(0, SkyTemperature.ofLongwaveC(5.670374419e-8 * Math.pow(273.15, 4)), 1e-9);
        assertEquals(20, SkyTemperature.ofLongwaveC(5.670374419e-8 * Math.pow(293.15, 4)), 1e-9);
    }
}
