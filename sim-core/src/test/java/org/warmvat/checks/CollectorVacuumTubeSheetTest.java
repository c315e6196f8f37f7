package org.warmvat.checks;

import org.warmvat.sun.TiltedIrradiance;

/**
 * Published: data sheet of a vacuum tube panel (aperture basis): efficiency equation with its table. Seen. Conditions: 1000
 * W/m2 at right angles. Tolerance: half the last printed digit.
 */
class CollectorVacuumTubeSheetTest implements Published {

    private static final Collectors.Coefficients SHEET = new Collectors.Coefficients(0.801, 3.653, 0.010, 1);

    @Override
    public Source source() {
        return new Source(
                Topic.COLLECTORS,
                "Vacuum tube data sheet",
                "Data sheet of a vacuum tube panel (aperture basis), seen beside that of the flat-plate collector.",
                "0.801 - 3.653 x - 0.010 G x2 with x = (Tm - Ta)/G, G = 1000 W/m2.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        double[] printed = {0.80, 0.76, 0.72, 0.68, 0.64, 0.59, 0.55, 0.50, 0.44, 0.39, 0.34};
        TiltedIrradiance sun = new TiltedIrradiance(1000, 0, 0, 0);
        int[] first = {0, 2, 4, 7, 10, 1, 3, 5, 6, 8, 9};
        Sheet.Table table = sheet.table(Provenance.SEEN);
        for (int i : first) {
            table.value(
                    "efficiency " + 10 * i + " K above the air",
                    printed[i],
                    SHEET.outputWPerM2(sun, 10 * i) / 1000,
                    0.005);
        }
    }
}
