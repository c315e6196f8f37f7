package org.warmvat.checks;

import java.util.Optional;
import org.warmvat.design.heating.Coil;

/**
 * Published: J. M. Coulson and J. F. Richardson, Chemical Engineering vol. 1, solution of problem 9.65: reaction vessel with
 * steam coil and lagging. Seen. Conditions: coil 0.2 m2 x 300 W/m2K, steam 393 K; wall 8 m2, lagging 50 mm of 0.05 with film
 * 10; one hour from 293 to 373 K. Tolerance: half the last printed digit.
 */
class CoilHeatedVesselCoulsonRichardsonTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.COILS,
                "Coulson and Richardson",
                "J. M. Coulson, J. F. Richardson, Chemical Engineering vol. 1, solutions, problem 9.65",
                "Coil 0.2 m2 of 300 W/m2K with steam at 393 K; wall 8 m2, lagging 50 mm of 0.05 W/mK, film 10 W/m2K, air 293 K;"
                        + " 293 to 373 K in one hour. Temperatures in kelvin.",
                Source.HALF_DIGIT);
    }

    private static Vessel vessel(double capacityJPerK) {
        double coil = new Coil(0.2, 300, Optional.of(300.0), 0).uaWPerK(true);
        double wall = 8 * new Chains.Wall(Chains.plane(Chains.layer(0.05, 0.05)), Chains.NO_FILM, 10).wattsPerK();
        return new Vessel(capacityJPerK, 293, (timeS, kelvin) -> coil * (393 - kelvin) + wall * (293 - kelvin));
    }

    @Override
    public void fill(Sheet sheet) {
        double capacity = Chains.solve(c -> vessel(c).secondsUntilC(373), 3600, 5e4, 2e5);
        sheet.table(Provenance.SEEN)
                .value("highest temperature, K", 382, vessel(1e4).afterS(36_000), 0.5)
                .notReproduced(
                        "heat capacity, J/K",
                        105_442,
                        capacity,
                        0.5,
                        "1.1 % apart: the book goes on with the highest temperature rounded to 382 K (382.19).");
    }
}
