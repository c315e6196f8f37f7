package org.warmvat.checks;

import org.warmvat.gas.GasVapour;

/**
 * Published: A. Wellinger, J. Murphy and D. Baxter (eds), The Biogas Handbook, 2013, chapter 8, equations 8.3 to 8.5:
 * specific heat of substrate, latent heat of the water that leaves with the gas. Seen. Tolerance: half the last printed digit;
 * the latent heat is that of boiling water and is held against ours at 100 °C.
 */
class DigesterHeatBiogasHandbook2013Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.DIGESTERS,
                "The Biogas Handbook",
                "A. Wellinger, J. Murphy, D. Baxter (eds), The Biogas Handbook, 2013, chapter 8, equations 8.3 to 8.5",
                "Substrate counted as water; latent heat at 100 °C.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        sheet.table(Provenance.SEEN)
                .value(
                        "specific heat of substrate, kJ/kgK",
                        4.186,
                        Designs.water(1000).specificHeatJPerKgK(0) / 1000,
                        5e-4)
                .value("latent heat at 100 °C, kJ/kg", 2260, GasVapour.latentHeatJPerKg(100) / 1000, 5)
                .notReproduced(
                        "latent heat used for a digester, kJ/kg",
                        2260,
                        GasVapour.latentHeatJPerKg(37) / 1000,
                        5,
                        "the handbook takes the value of boiling water; at 37 °C it is 7 % more, as the steam tables say.");
    }
}
