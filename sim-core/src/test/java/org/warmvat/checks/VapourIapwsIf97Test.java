package org.warmvat.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.warmvat.gas.GasVapour;
import org.warmvat.weather.Humidity;

/**
 * Published: IAPWS-IF97 release, table 35, saturation pressure at 300 K. Seen as quoted in public test files. Beside it a second
 * library, which reproduces the table to nine digits, stands for the steam tables from 10 to 60 °C. Tolerance: 0.5 %, the
 * stated uncertainty of the Magnus formula.
 */
class VapourIapwsIf97Test implements Published {

    private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);
    private static final double MAGNUS = 0.005;

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "IAPWS-IF97",
                "IAPWS Industrial Formulation 1997, table 35, as quoted in public test files.",
                "300 K; the second row is the steam-table library that stands beside the tests.",
                "0.5 %: the stated uncertainty of the Magnus formula; nine digits for the library.");
    }

    @Override
    public void fill(Sheet sheet) {
        double printedKPa = 3.53658941;
        sheet.table(Provenance.SEEN)
                .value(
                        "saturation pressure at 300 K, kPa",
                        printedKPa,
                        GasVapour.saturationPa(300 - 273.15) / 1000,
                        MAGNUS * printedKPa);
        sheet.table(Provenance.DERIVED)
                .value("the same by the library, kPa", printedKPa, STEAM.saturationPressureT(300) / 1000, 5e-9);
    }

    /** Pressure, in gas and in weather alike, and latent heat (a straight line, 0.1 %) against the library all the way from 10 to 60 °C. */
    @Test
    void againstTheLibrary() {
        for (int celsius = 10; celsius <= 60; celsius++) {
            double kelvin = celsius + 273.15;
            double steamPa = STEAM.saturationPressureT(kelvin);
            assertEquals(steamPa, GasVapour.saturationPa(celsius), MAGNUS * steamPa);
            assertEquals(steamPa, Humidity.saturationPa(celsius), MAGNUS * steamPa);
            double latent =
                    STEAM.specificEnthalpySaturatedVapourT(kelvin) - STEAM.specificEnthalpySaturatedLiquidT(kelvin);
            assertEquals(latent, GasVapour.latentHeatJPerKg(celsius), 0.001 * latent);
        }
    }
}
