package org.warmvat.checks;

import org.warmvat.weather.Humidity;

/**
 * Published: R. G. Allen and others, Crop evapotranspiration, FAO irrigation and drainage paper 56, example 3: saturation
 * pressures. From memory. Tolerance: 0.3 %, since that paper uses other coefficients of the Magnus form.
 */
class HumidityFao56Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.SKY,
                "FAO-56",
                "R. G. Allen and others, Crop evapotranspiration, FAO irrigation and drainage paper 56, example 3,"
                        + " https://www.fao.org/docrep/x0490e/x0490e07.htm",
                "24.5 and 15 °C.",
                "0.3 %: the paper has 17.27 and 237.3 in the Magnus form, the program 17.62 and 243.12.");
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.MEMORY)
                .value("saturation pressure at 24.5 °C, kPa", 3.075, Humidity.saturationPa(24.5) / 1000, 0.0092)
                .value("saturation pressure at 15 °C, kPa", 1.705, Humidity.saturationPa(15) / 1000, 0.0051);
    }
}
