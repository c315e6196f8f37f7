package org.warmvat.checks;

import org.warmvat.design.tank.Contents;
import org.warmvat.feeding.FeedStream;

/**
 * Published: Perry's Chemical Engineers' Handbook, 9th ed., table 2-135, specific heat of saturated liquid water. Seen;
 * converted to mass. Heat of fusion from memory. Tolerance: 0.2 %, since the program has one specific heat for all
 * temperatures; half a unit for the heat of fusion, which the program has in whole kJ.
 */
class WaterHeatPerryTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.DIGESTERS,
                "Perry",
                "Perry's Chemical Engineers' Handbook, 9th ed., table 2-135",
                "Feed that is water; 300 to 330 K, and freezing at 0 °C.",
                "0.2 %: one specific heat for all temperatures; 0.5 kJ/kg for the heat of fusion, which the program has in whole"
                        + " kJ.");
    }

    @Override
    public void fill(Sheet sheet) {
        FeedStream water = new FeedStream(Designs.water(1000), 0, 2);
        Sheet.Table table = sheet.table(Provenance.SEEN);
        double[][] printed = {{300, 4180.9}, {310, 4179.5}, {320, 4180.7}, {330, 4183.8}};
        for (double[] row : printed) {
            double celsius = row[0] - 273.15;
            table.value(
                    "specific heat at " + (int) row[0] + " K, J/kgK",
                    row[1],
                    water.enthalpyJPerKg(celsius + 0.5) - water.enthalpyJPerKg(celsius - 0.5),
                    8.4);
        }
        double frozen = water.enthalpyJPerKg(0) - water.enthalpyJPerKg(-2) - 2 * Contents.ICE_J_PER_KG_K;
        sheet.table(Provenance.MEMORY).value("heat of fusion, kJ/kg", 333.6, frozen / 1000, 0.5);
    }
}
