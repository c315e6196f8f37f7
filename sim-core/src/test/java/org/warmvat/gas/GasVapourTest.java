package org.warmvat.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;

/** Saturated gas against the steam tables (IAPWS-IF97 by a library of its own) and by hand (equation 3.4). */
class GasVapourTest {
    private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);

    /** Magnus as WMO No. 8 prints it stays within 0.5 % of the steam tables from 5 to 60 °C. */
    @Test
    void saturationPressureIsThatOfTheSteamTables() {
        for (double celsius = 5; celsius <= 60; celsius += 5) {
            double tables = STEAM.saturationPressureT(celsius + 273.15);
            assertEquals(tables, GasVapour.saturationPa(celsius), 0.005 * tables, celsius + " °C");
        }
        assertEquals(611.2, GasVapour.saturationPa(0));
    }

    /** Vapour taken as an ideal gas is 0.5 % off at 55 °C and less below. */
    @Test
    void vapourDensityIsThatOfTheSteamTables() {
        for (double celsius : new double[] {20, 37, 55}) {
            double tables = 1 / STEAM.specificVolumeSaturatedVapourT(celsius + 273.15);
            assertEquals(tables, GasVapour.densityKgPerM3(celsius), 0.007 * tables, celsius + " °C");
        }
    }

    /** The straight line for the latent heat stays within 0.2 % to 60 °C. */
    @Test
    void latentHeatIsThatOfTheSteamTables() {
        for (double celsius : new double[] {5, 36, 55}) {
            double kelvin = celsius + 273.15;
            double tables =
                    STEAM.specificEnthalpySaturatedVapourT(kelvin) - STEAM.specificEnthalpySaturatedLiquidT(kelvin);
            assertEquals(tables, GasVapour.latentHeatJPerKg(celsius), 0.002 * tables, celsius + " °C");
        }
    }

    /** At 36 °C and 1000 hPa: e_s 5940 Pa, 309.15/273.15 x 101325/(100000 - 5940) = 1.2192 m3 wet for a normal cubic metre dry. */
    @Test
    void wetVolumeByHand() {
        double es = 611.2 * Math.exp(17.62 * 36 / 279.12);
        assertEquals(5934, es, 10);
        assertEquals(309.15 / 273.15 * 101_325 / (100_000 - es), GasVapour.wetM3PerNm3(36, 100_000), 1e-12);
        assertEquals(1, GasVapour.wetM3PerNm3(0, 101_325 + 611.2), 1e-12);
    }

    /** Latent 0.0416 kg/m3 x 2.416e6 J/kg and sensible 1440 x 31 K, on 1.219 m3. */
    @Test
    void heatOfANormalCubicMetreByHand() {
        double es = GasVapour.saturationPa(36);
        double perM3 = es / (461.5 * 309.15) * (2.501e6 - 2361 * 36) + 1440 * (36 - 5);
        assertEquals(perM3 * GasVapour.wetM3PerNm3(36, 1e5), GasVapour.heatJPerNm3(36, 5, 1e5, 1440), 1e-6);
        assertEquals(1.77e5, GasVapour.heatJPerNm3(36, 5, 1e5, 1440), 2e3);
    }

    /** No latent heat is forgotten when the air is as warm as the slurry. */
    @Test
    void onlyVapourLeavesWhenTheAirIsAsWarm() {
        double latent = GasVapour.densityKgPerM3(36) * GasVapour.latentHeatJPerKg(36) * GasVapour.wetM3PerNm3(36, 1e5);
        assertEquals(latent, GasVapour.heatJPerNm3(36, 36, 1e5, 1440), 1e-9);
    }
}
