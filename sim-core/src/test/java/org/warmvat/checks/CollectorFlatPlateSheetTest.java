package org.warmvat.checks;

import org.warmvat.sun.TiltedIrradiance;

/**
 * Published: test sheet of a glazed flat-plate collector, maker left out, tests of June 2022, output per square metre at
 * 1000 W/m2. Seen. Conditions: standard blue sky of 850 beam and 150 diffuse. Tolerance: half the last printed digit.
 */
class CollectorFlatPlateSheetTest implements Published {

    private static final Collectors.Coefficients SHEET = new Collectors.Coefficients(0.739, 3.51, 0.017, 0.91);

    @Override
    public Source source() {
        return new Source(
                Topic.COLLECTORS,
                "Test sheet of a flat-plate collector",
                "Sheet of the certificate of a glazed flat-plate collector, tests of June 2022; maker and number left out.",
                "Zero-loss 0.739, a1 3.51, a2 0.017, diffuse modifier 0.91; 850 W/m2 beam at right angles and 150 diffuse.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        TiltedIrradiance blueSky = new TiltedIrradiance(850, 150, 0, 0);
        Sheet.Table table = sheet.table(Provenance.SEEN);
        double[][] printed = {{0, 729}, {10, 692}, {30, 608}, {50, 511}, {70, 400}, {83, 321}};
        for (double[] row : printed) {
            table.value(
                    "output " + (int) row[0] + " K above the air, W/m2",
                    row[1],
                    SHEET.outputWPerM2(blueSky, row[0]),
                    0.5);
        }
        double stagnationK = Chains.solve(k -> SHEET.outputWPerM2(blueSky, k), 0, 50, 300);
        table.notReproduced(
                "stagnation at 1000 W/m2 and 30 °C, °C",
                189.4,
                30 + stagnationK,
                0.05,
                "a separate test on the sheet; its own coefficients give 158 °C.");
    }
}
