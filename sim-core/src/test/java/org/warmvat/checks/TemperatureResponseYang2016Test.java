package org.warmvat.checks;

import java.util.List;
import java.util.Optional;
import org.warmvat.design.gas.Gas;

/**
 * Published: Yang and others, Water Research 102 (2016) 464-474, swine wastewater: highest volumetric methane rates at 15 to 35
 * °C, taken relative to 35 °C. Seen. Conditions: cardinal temperatures 0, 37, 45 °C (common practice, no source). Tolerance:
 * 0.07 of the rate at 35 °C: the study's loadings differ by a factor of six between its temperatures; 15 °C misses it.
 */
class TemperatureResponseYang2016Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "Yang and others",
                "Yang and others, Water Research 102 (2016) 464-474",
                "0.136, 0.796, 1.294, 1.527, 1.952 L/(L d) at 15, 20, 25, 30, 35 °C over the last; cardinal temperatures 0, 37, 45"
                        + " °C (common practice, no source).",
                "0.07: a wide one, and a finding; the study loads its tanks six times as much at 35 as at 15 °C, so that its rates"
                        + " are not of one substrate at one loading.");
    }

    @Override
    public void fill(Sheet sheet) {
        Gas gas = new Gas(
                35, 0.58, Designs.MESOPHILIC, Optional.empty(), 0, 1440, Optional.empty(), List.of(), Optional.empty());
        sheet.table(Provenance.SEEN)
                .value("rate at 20 °C over that at 35 °C", 0.408, gas.rateFactor(20), 0.07)
                .value("rate at 25 °C over that at 35 °C", 0.663, gas.rateFactor(25), 0.07)
                .value("rate at 30 °C over that at 35 °C", 0.782, gas.rateFactor(30), 0.07)
                .notReproduced(
                        "rate at 15 °C over that at 35 °C",
                        0.070,
                        gas.rateFactor(15),
                        0.07,
                        "a tank at 15 °C did far worse than the curve says: below 20 °C the program promises too much gas.");
    }
}
