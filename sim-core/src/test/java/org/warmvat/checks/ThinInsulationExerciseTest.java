package org.warmvat.checks;

/**
 * Published: an unnamed exercise: steam pipe with thin insulation. Seen. Conditions: 5/6 cm of 43, 1.2 cm of 0.11 W/mK, films
 * 500 and 17, 6 m, 150 and 16 °C. Half the last printed digit is missed by 0.1 %: the book's sum is rounded on the way.
 */
class ThinInsulationExerciseTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.TANKS,
                "Thin insulation exercise",
                "\"Steam having a quality of 99 % is flowing at a ...\" (book not named),"
                        + " https://homework.zookal.com/questions-and-answers/steam-having-a-quality-of-99-is-flowing-at-a-207239817",
                "Pipe 5/6 cm of 43, insulation 1.2 cm of 0.11 W/mK, films 500 and 17 W/m2K, 6 m, 150 and 16 °C.",
                Source.HALF_DIGIT);
    }

    @Override
    public void fill(Sheet sheet) {
        Chains.Wall pipe =
                new Chains.Wall(Chains.pipe(0.05, 6, Chains.layer(0.005, 43), Chains.layer(0.012, 0.11)), 500, 17);
        String why = "0.1 % apart; the printed resistances are rounded before they are added.";
        sheet.table(Provenance.SEEN)
                .notReproduced("resistance, K/W", 0.1204, 1 / pipe.wattsPerK(), 5e-5, why)
                .notReproduced("loss, W", 1113, pipe.watts(150, 16), 0.5, why);
    }
}
