package org.warmvat.checks;

/**
 * Published: an unnamed heat transfer exercise: mild steel tank wall between water and air. Seen. Conditions: films 2850 and
 * 10 W/m2K, steel 12 mm / 50, 95 and 15 °C. Tolerance: 0.4 W/m2, since 795.2 is 80 K times the coefficient rounded to 9.94.
 */
class HotTankWallExerciseTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.WALLS,
                "Steel tank exercise",
                "\"A mild steel tank of wall thickness 12 mm contains water at 95 °C\" (textbook not named),"
                        + " https://sarthaks.com/3079248/a-mild-steel-tank-of-wall-thickness-12-mm-contains-water-at-95c",
                "Films 2850 and 10 W/m2K, steel 12 mm of 50 W/mK, 95 and 15 °C.",
                "0.4 W/m2: 795.2 is 80 K times a coefficient rounded to 9.94, which is good to 0.005.");
    }

    @Override
    public void fill(Sheet sheet) {
        double watts = new Chains.Wall(Chains.plane(Chains.layer(0.012, 50)), 2850, 10).watts(95, 15);
        sheet.table(Provenance.SEEN).value("heat flux, W/m2", 795.2, watts, 0.4);
    }
}
