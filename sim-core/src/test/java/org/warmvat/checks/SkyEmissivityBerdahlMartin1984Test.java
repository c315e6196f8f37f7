package org.warmvat.checks;

import org.warmvat.weather.SkyTemperature;

/**
 * From a published equation: P. Berdahl and M. Martin, Solar Energy 32 (1984) 663-664, clear-sky emissivity. Equation seen
 * second hand many times, numbers derived. Tolerance: half the last digit.
 */
class SkyEmissivityBerdahlMartin1984Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.SKY,
                "Berdahl and Martin",
                "P. Berdahl, M. Martin, Solar Energy 32 (1984) 663-664.",
                "Air and dew point as named, 1000 hPa, at 6 h, noon and midnight; tests the writing of the equation, not its truth:"
                        + " published sky models differ by up to 9 K.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.DERIVED)
                .value("emissivity, dew point 10 °C", 0.77430, SkyTemperature.clearEmissivity(10, 6, 1000), 5e-6)
                .value("the same at midnight", 0.78730, SkyTemperature.clearEmissivity(10, 0, 1000), 5e-6)
                .value("the same at noon", 0.76130, SkyTemperature.clearEmissivity(10, 12, 1000), 5e-6)
                .value(
                        "sky, air 0 and dew point -5 °C, °C",
                        -24.67,
                        SkyTemperature.ofEmissivityC(SkyTemperature.clearEmissivity(-5, 6, 1000), 0),
                        0.005);
    }
}
