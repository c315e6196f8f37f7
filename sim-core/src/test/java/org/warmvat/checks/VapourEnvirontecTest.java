package org.warmvat.checks;

import org.warmvat.gas.GasVapour;

/**
 * Published: Environtec, "Humidity and condensate removal" in biogas. Seen. Tolerance: half the last printed digit.
 */
class VapourEnvirontecTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "Environtec",
                "Environtec, \"Humidity and condensate removal\", https://www.environtec.co.nz/humidity-and-condensate-removal",
                "Saturated biogas.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.SEEN)
                .value("vapour at 37 °C, kg/m3", 0.044, GasVapour.densityKgPerM3(37), 5e-4)
                .value("vapour at 5 °C, kg/m3", 0.007, GasVapour.densityKgPerM3(5), 5e-4);
    }
}
