package org.warmvat.checks;

import java.util.Optional;
import org.warmvat.design.heating.Coil;
import org.warmvat.heating.CoilFlow;

/**
 * From a published equation: D. Q. Kern, Process Heat Transfer, batch heating by a coil with a non-isothermal medium.
 * Equation seen, case derived. Conditions: 1000 kg x 4180 J/kgK, 0.1 kg/s of water at 60 °C, coil 300 W/K, 10 to 37 °C.
 * Tolerance: 0.01 s, what locating the switching leaves open.
 */
class MixedVesselCoilKernTest implements Published {

    @Override
    public Source source() {
        return new Source(
                Topic.COILS,
                "Kern",
                "D. Q. Kern, Process Heat Transfer, batch heating by a coil with a non-isothermal medium",
                "1000 kg of 4180 J/kgK, 0.1 kg/s of water at 60 °C, coil 300 W/K.",
                "0.01 s: locating the switching.");
    }

    @Override
    public void fill(Sheet sheet) {
        CoilFlow coil = new CoilFlow(new Coil(1, 300, Optional.of(300.0), 0), 1, 0.1 * 4180);
        double conductance = coil.effectiveness(true) * coil.capacityRateWPerK();
        sheet.table(Provenance.DERIVED)
                .value(
                        "time from 10 to 37 °C, s",
                        15_162.77,
                        Vessel.between(1000 * 4180, 10, conductance, 60).secondsUntilC(37),
                        0.01);
    }
}
