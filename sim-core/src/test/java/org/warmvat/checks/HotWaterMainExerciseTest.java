package org.warmvat.checks;

/**
 * Published: an unnamed examination exercise (in Finnish): insulated steel hot-water main. Seen. Conditions: pipe 100/106 mm
 * of 17, foam 50 mm of 0.033, films 4500 and 10, 130 and -5 °C. Tolerance: half the last printed digit.
 */
class HotWaterMainExerciseTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.TANKS,
                "Hot-water main exercise",
                "Examination exercise \"Teräsputkessa virtaa vettä\" (book not named),"
                        + " https://math-gpt.org/problems/question/terasputkessa-virtaa-vetta-putken-ulkohalkaisija-on-106-mm-ja-sisahalkai",
                "Pipe 100/106 mm of 17, foam 50 mm of 0.033 W/mK, films 4500 and 10 W/m2K, 130 and -5 °C.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        double watts = new Chains.Wall(
                        Chains.pipe(0.1, 1, Chains.layer(0.003, 17), Chains.layer(0.05, 0.033)), 4500, 10)
                .watts(130, -5);
        sheet.table(Provenance.SEEN).value("loss of a metre, W", 40.2, watts, 0.05);
    }
}
