package org.warmvat.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Vapour pressure: FAO-56 example 3 gives 3.075 kPa at 24.5 C and 1.705 at 15 C with slightly other constants (from
 * memory); Magnus with the constants of WMO No. 8 lies within 0.3 %.
 */
class HumidityTest {
    @Test
    void saturationPressureFao56() {
        assertEquals(3075, Humidity.saturationPa(24.5), 0.003 * 3075);
        assertEquals(1705, Humidity.saturationPa(15), 0.003 * 1705);
        assertEquals(611.2, Humidity.saturationPa(0));
    }

    @Test
    void thereAndBack() {
        for (double air = -40; air <= 45; air += 5) {
            for (double humidity = 0.05; humidity <= 1; humidity += 0.05) {
                double dew = Humidity.dewPointC(air, humidity);
                assertEquals(humidity, Humidity.relativeHumidityFraction(air, dew), 1e-12);
                assertTrue(dew <= air + 1e-9);
            }
        }
    }

    @Test
    void bonesDryAirStillHasADewPoint() {
        assertEquals(Humidity.dewPointC(20, 0.001), Humidity.dewPointC(20, 0));
    }
}
