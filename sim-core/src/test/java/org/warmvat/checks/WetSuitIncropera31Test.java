package org.warmvat.checks;

/**
 * Published: F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 3.1: aerogel suit in air and water.
 * Transcribed. Conditions: skin layer 3 mm / 0.3, aerogel 0.014, 1.8 m2, 35 to 10 °C, 100 W, radiation 5.9, convection 2 or
 * 200 W/m2K. Tolerance: half the last printed digit.
 */
class WetSuitIncropera31Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "Incropera",
                "F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 3.1; FOSSEE textbook companion,"
                        + " chapter 3.",
                "Skin layer 3 mm of 0.3, aerogel of 0.014 W/mK, 1.8 m2, 35 °C inside, 10 °C outside, 100 W; film 2 + 5.9 or 200 +"
                        + " 5.9 W/m2K; thickness found by search.",
                Source.HALF_DIGIT);
    }

    private static Chains.Wall suit(double aerogelM, double filmWPerM2K) {
        return new Chains.Wall(
                Chains.plane(Chains.layer(0.003, 0.3), Chains.layer(aerogelM, 0.014)), Chains.NO_FILM, filmWPerM2K);
    }

    private static double thicknessMm(double filmWPerM2K) {
        return 1000 * Chains.solve(d -> 1.8 * suit(d, filmWPerM2K).watts(35, 10), 100, 1e-4, 0.1);
    }

    @Override
    public void fill(Sheet sheet) {
        double skinC = 35
                - 100
                        / 1.8
                        / new Chains.Wall(Chains.plane(Chains.layer(0.003, 0.3)), Chains.NO_FILM, Chains.NO_FILM)
                                .wattsPerK();
        sheet.table(Provenance.TRANSCRIBED)
                .value("aerogel in air, mm", 4.4, thicknessMm(2 + 5.9), 0.05)
                .value("aerogel in water, mm", 6.1, thicknessMm(200 + 5.9), 0.05)
                .value("skin, °C", 34.4, skinC, 0.05);
    }
}
