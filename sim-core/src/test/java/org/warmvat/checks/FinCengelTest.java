package org.warmvat.checks;

import org.warmvat.design.envelope.Fitting;
import org.warmvat.design.envelope.Material;
import org.warmvat.envelope.FittingLoss;

/**
 * Published: Y. A. Cengel, Heat and Mass Transfer, table in the section "Proper length of a fin": heat of a fin against that
 * of an infinitely long one. From memory. Conditions: a bare steel pipe of still slurry; its fin number is read back from the
 * program's tip share, an infinite one stood in for by 50 m. Tolerance: half the last printed digit.
 */
class FinCengelTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.TANKS,
                "Cengel",
                "Y. A. Cengel, Heat and Mass Transfer, section on finned surfaces, table of the heat of a fin over that of an"
                        + " infinitely long one.",
                "Bare steel pipe, bore 50 mm, wall 3 mm, full of still slurry; mL from the tip share 1/cosh(mL); 50 m for"
                        + " infinity.",
                Source.HALF_DIGIT);
    }

    private static FittingLoss pipe(double lengthM) {
        return FittingLoss.of(
                new Fitting.Pipe(
                        "outlet",
                        new Fitting.Stub(0.05, new Material("steel", 50, 7800, 450), 0.003, lengthM, 0, 0.03)),
                new FittingLoss.Still(0.6, 10));
    }

    private static double finNumber(double lengthM) {
        double x = 1 / pipe(lengthM).tipShare();
        return Math.log(x + Math.sqrt(x * x - 1));
    }

    @Override
    public void fill(Sheet sheet) {
        double[][] printed = {{0.5, 0.462}, {1.0, 0.762}, {1.5, 0.905}, {2.0, 0.964}, {2.5, 0.987}, {3.0, 0.995}};
        Sheet.Table table = sheet.table(Provenance.MEMORY);
        for (double[] row : printed) {
            double length = Chains.solve(FinCengelTest::finNumber, row[0], 0.02, 2);
            table.value(
                    "share of an infinite fin at mL = " + row[0],
                    row[1],
                    pipe(length).uaWPerK() / pipe(50).uaWPerK(),
                    5e-4);
        }
    }
}
