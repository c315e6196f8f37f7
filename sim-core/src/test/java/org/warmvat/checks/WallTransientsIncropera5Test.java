package org.warmvat.checks;

import org.warmvat.design.envelope.Layer;

/**
 * Published: F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 5.4 (pipe wall suddenly filled with
 * hot oil; from memory and transcribed) and example 5.6 (depth of a buried pipe; seen). Conditions: layers of 50 sub-nodes, the
 * soil three of 2 m. Tolerance: half the last printed digit.
 */
class WallTransientsIncropera5Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.CONDUCTION,
                "Incropera",
                "F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 5.4 (FOSSEE textbook companion) and 5.6",
                "5.4: wall 40 mm of 63.9 W/mK, 18.8e-6 m2/s, film 500, from -20 °C in 60 °C, 8 min, per m2, pipe 1 m across. 5.6: soil"
                        + " of 0.52 W/mK, 2050 x 1840, 20 °C, surface at -15 °C for 60 days; 6 m of soil.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        Layer steel = Chains.layer(0.04, 63.9, 7823, 63.9 / 18.8e-6 / 7823, 50);
        Slab wall = new Slab(Chains.plane(steel), -20, 500, 60);
        double[] celsius = wall.afterS(480);
        double meanC = 0;
        for (double c : celsius) {
            meanC += c / celsius.length;
        }
        double perMetre = Math.PI * (meanC + 20) * 0.04 * steel.material().heatCapacityJPerM3K();
        double inner = wall.outerFaceC(celsius[49]);
        String rounding =
                "the book takes eigenvalue and coefficient from its table and rounds on the way; a full series gives ";
        sheet.table(Provenance.MEMORY)
                .value("5.4: heat taken up by a metre of pipe, 1e7 J", 2.73, perMetre / 1e7, 0.005)
                .notReproduced("5.4: wetted face, °C", 45.2, inner, 0.05, rounding + "45.36.")
                .notReproduced("5.4: flux into the wall, W/m2", 7400, 500 * (60 - inner), 50, rounding + "7318.");
        sheet.table(Provenance.TRANSCRIBED)
                .notReproduced("5.4: insulated face, °C", 42.9, celsius[0], 0.05, rounding + "43.02.");
        double thickness = 6;
        Layer earth = Chains.layer(thickness / 3, 0.52, 2050, 1840, 50);
        Slab soil = new Slab(Chains.plane(earth, earth, earth), 20, Chains.NO_FILM, -15);
        double[] after = soil.afterS(60 * 86_400.0);
        sheet.table(Provenance.SEEN)
                .value("5.6: depth of frost after 60 days, m", 0.68, depthOfC(after, thickness, 0), 0.005);
    }

    /** Depth from the outer face at which a temperature stands, between sub-nodes by a straight line, m. */
    static double depthOfC(double[] celsius, double thicknessM, double targetC) {
        double slice = thicknessM / celsius.length;
        int outer = celsius.length - 1;
        while (celsius[outer] < targetC) {
            outer--;
        }
        double share = (celsius[outer] - targetC) / (celsius[outer] - celsius[outer + 1]);
        return (celsius.length - outer - 0.5 - share) * slice;
    }
}
