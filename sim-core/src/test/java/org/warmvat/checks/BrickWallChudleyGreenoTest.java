package org.warmvat.checks;

/**
 * Published: R. Chudley and R. Greeno, Building Construction Handbook, p. 468: solid brick wall. Seen. Conditions: outer
 * surface 0.055, brick 215 mm / 0.84, plaster 13 mm / 0.50, inner surface 0.123 m2K/W. Tolerance: half the last printed digit.
 */
class BrickWallChudleyGreenoTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "Chudley and Greeno",
                "R. Chudley, R. Greeno, Building Construction Handbook, p. 468",
                "Surfaces 0.055 and 0.123 m2K/W, brick 215 mm of 0.84, plaster 13 mm of 0.50 W/mK.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        double u = new Chains.Wall(
                        Chains.plane(Chains.layer(0.013, 0.50), Chains.layer(0.215, 0.84)), 1 / 0.123, 1 / 0.055)
                .wattsPerK();
        sheet.table(Provenance.SEEN).value("solid brick wall, W/m2K", 2.17, u, 0.005);
    }
}
