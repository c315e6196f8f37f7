package org.warmvat.checks;

/**
 * Published: Y. A. Cengel, Heat and Mass Transfer, example 4-1: thermocouple of 1 mm. Inputs transcribed, answers from memory.
 * Conditions: 8500 kg/m3, 320 J/kgK, film 210 W/m2K, time to 99 % of the change. Tolerance: half the last printed digit.
 */
class SphereJunctionCengel41Test implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.LUMPED,
                "Cengel",
                "Y. A. Cengel, Heat and Mass Transfer, example 4-1; FOSSEE Scilab textbook companion 587.",
                "Sphere of 1 mm, 8500 kg/m3, 320 J/kgK, film 210 W/m2K; per m2.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        double seconds = Vessel.between(8500 * 320 * 0.001 / 6, 0, 210, 100).secondsUntilC(99);
        sheet.table(Provenance.MEMORY)
                .value("time for 99 % of the change, s", 10, seconds, 0.5)
                .notReproduced(
                        "exponent, 1/s",
                        0.462,
                        Math.log(100) / seconds,
                        5e-4,
                        "the book goes on with the characteristic length rounded to 1.67e-4 m.");
    }
}
