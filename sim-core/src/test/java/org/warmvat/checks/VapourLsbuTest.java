package org.warmvat.checks;

import org.warmvat.gas.GasVapour;

/**
 * Published: London South Bank University, Water structure and science, water vapour pressure. Seen. Tolerance: 0.5 %,
 * the stated uncertainty of the Magnus formula.
 */
class VapourLsbuTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.GAS,
                "LSBU",
                "London South Bank University, Water structure and science, http://www1.lsbu.ac.uk/water/data1.html",
                "Saturation pressure by Magnus (WMO No. 8).",
                "0.5 %: the stated uncertainty of the Magnus formula.");
    }

    @Override
    public void fill(Sheet sheet) {
        Sheet.Table table = sheet.table(Provenance.SEEN);
        double[][] printed = {{0, 0.611}, {10, 1.228}, {20, 2.339}, {40, 7.385}, {60, 19.947}, {30, 4.247}, {50, 12.353}
        };
        for (double[] row : printed) {
            table.value(
                    "saturation pressure at " + (int) row[0] + " °C, kPa",
                    row[1],
                    GasVapour.saturationPa(row[0]) / 1000,
                    0.005 * row[1]);
        }
    }
}
