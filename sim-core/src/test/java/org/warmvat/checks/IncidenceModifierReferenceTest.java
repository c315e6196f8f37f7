package org.warmvat.checks;

import org.warmvat.heating.IncidenceModifiers;

/**
 * Published: incidence angle modifier 1 - b0 (1/cos - 1) with b0 = 0.05 in the tests of an open reference library
 * (pvlib-python). Seen second hand. Tolerance: half the last printed digit.
 */
class IncidenceModifierReferenceTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.COLLECTORS,
                "pvlib-python",
                "Open library pvlib-python, tests of the incidence angle modifier.",
                "b0 = 0.05.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        IncidenceModifiers collector =
                new IncidenceModifiers(Collectors.withB0(0.05).incidence());
        Sheet.Table table = sheet.table(Provenance.SEEN);
        double[][] printed = {{22.5, 0.99588039}, {45, 0.97928932}, {67.5, 0.9193437}};
        for (double[] row : printed) {
            table.value("modifier at " + row[0] + "°", row[1], collector.beam(row[0]), 5e-8);
        }
    }
}
