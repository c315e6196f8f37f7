package org.warmvat.checks;

/**
 * Published: conserveandsave.co.uk, "Wall U-values", rendered double brick wall. Seen. Conditions: surfaces 0.04 and 0.13
 * m2K/W, render 18 mm / 0.50, bricks 102 mm / 0.77 and 0.56, plaster 13 mm / 0.57. Tolerance: half the last printed digit,
 * which the printed value does not meet: it sums rounded resistances.
 */
class DoubleBrickConserveAndSaveTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "conserveandsave.co.uk",
                "\"Wall U-values\", http://www.conserveandsave.co.uk/calculations/wall-u-values",
                "Surfaces 0.04 and 0.13 m2K/W, render 18 mm of 0.50, brick 102 mm of 0.77 and 102 mm of 0.56, plaster 13 mm of"
                        + " 0.57 W/mK.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        double u = new Chains.Wall(
                        Chains.plane(
                                Chains.layer(0.013, 0.57),
                                Chains.layer(0.102, 0.56),
                                Chains.layer(0.102, 0.77),
                                Chains.layer(0.018, 0.50)),
                        1 / 0.13,
                        1 / 0.04)
                .wattsPerK();
        sheet.table(Provenance.SEEN)
                .notReproduced(
                        "double brick wall, W/m2K",
                        1.85,
                        u,
                        0.005,
                        "the page adds resistances rounded to two decimals, which gives 0.54 m2K/W instead of 0.5436.");
    }
}
