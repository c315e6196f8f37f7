package org.warmvat.checks;

import org.warmvat.design.envelope.Layer;

/**
 * Published: Y. A. Cengel, Heat and Mass Transfer, problem 4-36 (brass plate in an oven; seen), examples 4-4 (the same by
 * chart) and 4-6 (frost in soil by chart); transcribed. Conditions: 50 sub-nodes. The two chart readings are not reproduced.
 */
class WallTransientsCengel4Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.CONDUCTION,
                "Cengel",
                "Y. A. Cengel, Heat and Mass Transfer, problem 4-36,"
                        + " and examples 4-4 and 4-6, FOSSEE"
                        + " Scilab textbook companion 587.",
                "4-36: half thickness 15 mm, 110 W/mK, 33.9e-6 m2/s, film 80, 25 °C in 700 °C, 10 min. 4-4: 20 mm of the same, film"
                        + " 120, 20 °C in 500 °C, 7 min. 4-6: soil of 0.15e-6 m2/s, 15 °C, surface at -10 °C for 90 days; 6 m of soil.",
                "Half the last printed digit; 4-36 is printed to whole degrees.");
    }

    private static Slab brass(double halfM, double filmWPerM2K, double startC, double ovenC) {
        return new Slab(
                Chains.plane(Chains.layer(halfM, 110, 8530, 110 / 33.9e-6 / 8530, 50)), startC, filmWPerM2K, ovenC);
    }

    @Override
    public void fill(Sheet sheet) {
        Slab plate = brass(0.015, 80, 25, 700);
        double[] hot = plate.afterS(600);
        sheet.table(Provenance.DERIVED).value("4-36: face after 10 min, °C", 448.24, plate.outerFaceC(hot[49]), 0.05);
        double[] oven = brass(0.02, 120, 20, 500).afterS(420);
        double thickness = 6;
        Layer earth = Chains.layer(thickness / 3, 0.4, 1500, 0.4 / 0.15e-6 / 1500, 50);
        double[] soil = new Slab(Chains.plane(earth, earth, earth), 15, Chains.NO_FILM, -10).afterS(90 * 86_400.0);
        sheet.table(Provenance.TRANSCRIBED)
                .notReproduced(
                        "4-4: face after 7 min, °C", 282, oven[49], 0.5, "a chart reading; the series gives 279.6.")
                .notReproduced(
                        "4-6: depth of frost after 90 days, m",
                        0.777,
                        WallTransientsIncropera5Test.depthOfC(soil, thickness, 0),
                        5e-4,
                        "a chart reading; exact 0.801 m.");
    }
}
