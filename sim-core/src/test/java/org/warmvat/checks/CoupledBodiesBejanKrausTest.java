package org.warmvat.checks;

/**
 * From a published equation: A. Bejan and A. D. Kraus (eds), Heat Transfer Handbook, equation 3.286 (film that grows with the
 * temperature difference). Equation seen, numbers derived. Tolerance: 1e-6, what the engine's tolerance leaves open.
 */
class CoupledBodiesBejanKrausTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.LUMPED,
                "Bejan and Kraus",
                "A. Bejan, A. D. Kraus (eds), Heat Transfer Handbook, equation 3.286",
                "h = hi (dT/dTi)^0.25, hi 5 W/m2K, 2 m2, 2e5 J/K, dTi 40 K, ten hours.",
                "1e-6: the reference engine's tolerance.");
    }

    @Override
    public void fill(Sheet sheet) {
        Vessel body = new Vessel(2e5, 40, (timeS, difference) -> -5 * 2 * Math.pow(difference / 40, 0.25) * difference);
        sheet.table(Provenance.DERIVED)
                .value("share of the difference left", 0.2262184, body.afterS(36_000) / 40, 1e-6);
    }
}
