package org.warmvat.checks;

/**
 * Published: F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, examples 5.1 (thermocouple), 5.2 (the same
 * with radiation) and 5.3 (curing oven and cooling, two stages). Transcribed or from memory as marked. Conditions: radiation
 * with 5.67e-8 W/m2K4 and 0 °C = 273 K, as in the book. Tolerance: half the last printed digit.
 */
class LumpedBodiesIncropera5Test implements Published {

    private static final double SIGMA = 5.67e-8;
    private static final double ZERO_K = 273;
    private static final double SHEET_J_PER_M2K = 2770 * 875 * 0.0015;

    /** The engine's first step is made for tanks; a body of a second is run a thousand times slower. */
    private static final double SLOWER = 1000;

    @Override
    public Source source() {
        return new Source(
                Topic.LUMPED,
                "Incropera",
                "F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, examples 5.1, 5.2, 5.3; FOSSEE textbook"
                        + " companion, chapter 5.",
                "5.1: 8500 kg/m3, 400 J/kgK, film 400 W/m2K, 0.706 mm, 25 to 199 °C in 200 °C. 5.2: emissivity 0.9, walls"
                        + " 400 °C. 5.3: half sheet 1.5 mm of 2770 x 875, emissivity 0.8; oven 175 °C, film 40, 300 s after 150 °C;"
                        + " then 25 °C, film 10, to 37 °C. Per m2; times found by located switching.",
                Source.HALF_DIGIT + " The transcribed 123.07 is cut off, not rounded: 0.01.");
    }

    /** A square metre with convection and radiation. */
    private static Vessel radiating(double capacity, double startC, double filmWPerM2K, double airC, Walls walls) {
        return new Vessel(capacity, startC, (timeS, celsius) -> {
            double kelvin = celsius + ZERO_K;
            double wallK = walls.celsius() + ZERO_K;
            return filmWPerM2K * (airC - celsius)
                    + walls.emissivity() * SIGMA * (Math.pow(wallK, 4) - Math.pow(kelvin, 4));
        });
    }

    /** What radiates onto the body. */
    private record Walls(double celsius, double emissivity) {}

    @Override
    public void fill(Sheet sheet) {
        // volume over area of a sphere: D/6
        double thermocouple = 8500 * 400 * 7.06e-4 / 6;
        sheet.table(Provenance.TRANSCRIBED)
                .value(
                        "5.1: time to 199 °C, s",
                        5.2,
                        Vessel.between(thermocouple, 25, 400, 200).secondsUntilC(199),
                        0.05);
        Vessel junction = radiating(SLOWER * thermocouple, 25, 400, 200, new Walls(400, 0.9));
        sheet.table(Provenance.MEMORY).value("5.2: steady temperature, °C", 218.7, junction.afterS(SLOWER * 30), 0.05);
        sheet.table(Provenance.TRANSCRIBED)
                .value("5.2: time to 217.7 °C, s", 4.98, junction.secondsUntilC(217.7) / SLOWER, 0.005);
        Vessel curing = radiating(SHEET_J_PER_M2K, 25, 40, 175, new Walls(175, 0.8));
        double heating = curing.secondsUntilC(150);
        double curedC = curing.afterS(heating + 300);
        Vessel cooling = radiating(SHEET_J_PER_M2K, curedC, 10, 25, new Walls(25, 0.8));
        double whole = heating + 300 + cooling.secondsUntilC(37);
        sheet.table(Provenance.TRANSCRIBED).value("5.3: time to 150 °C, s", 123.07, heating, 0.01);
        sheet.table(Provenance.MEMORY)
                .value("5.3: at the end of the cure, °C", 175, curedC, 0.5)
                .notReproduced(
                        "5.3: time to 37 °C, s",
                        989,
                        whole,
                        0.5,
                        "the book integrates with coarse steps; its transcription gives 987, an exact integration 986.3.");
    }
}
