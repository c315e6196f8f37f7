package org.warmvat.checks;

import java.util.Optional;
import org.warmvat.design.heating.Coil;

/**
 * Published: R. B. Bird, W. E. Stewart and E. N. Lightfoot, Transport Phenomena, example 15.5-1: a stirred tank that is
 * filled while its coil is wetted more and more. Seen. Conditions: feed 20 lb/min at 20 °C, steam 105 °C, ten turns of 4 ft of
 * 1 in tube, 100 Btu/(h ft2 F). Divided by the growing contents, the balance is that of a body of 1 J/K with an exchange of 1/t
 * to the feed and N to the steam, t counted in filling times; its start is taken at 1e-6. Tolerance: half the last printed
 * digit.
 */
class FillingTankBirdStewartLightfootTest implements Published {

    private static final double W_PER_M2K = 100 * 5.678263;
    private static final double KG_PER_S = 20 * 0.45359237 / 60;
    private static final double J_PER_KG_K = 4186.8;
    private static final double FILL_S = 3600;

    @Override
    public Source source() {
        return new Source(
                Topic.COILS,
                "Bird, Stewart and Lightfoot",
                "R. B. Bird, W. E. Stewart, E. N. Lightfoot, Transport Phenomena, example 15.5-1",
                "Feed 20 lb/min at 20 °C, steam 105 °C, coil of ten turns of 4 ft diameter, tube 1 in, 100 Btu/(h ft2 F), wetted in"
                        + " proportion to the contents.",
                Source.HALF_DIGIT);
    }

    private static double transferUnits() {
        double area = Math.PI * 0.0254 * 10 * Math.PI * 4 * 0.3048;
        return new Coil(area, W_PER_M2K, Optional.of(W_PER_M2K), 0).uaWPerK(true) / (KG_PER_S * J_PER_KG_K);
    }

    private static double fullC() {
        double n = transferUnits();
        return new Vessel(
                        1,
                        20,
                        (timeS, celsius) -> (20 - celsius) / (timeS + 1e-6 * FILL_S) + n / FILL_S * (105 - celsius))
                .afterS(FILL_S);
    }

    @Override
    public void fill(Sheet sheet) {
        double full = fullC();
        sheet.table(Provenance.SEEN)
                .value("transfer units of the coil when full", 2.74, transferUnits(), 0.005)
                .value("dimensionless temperature when full", 0.659, (full - 20) / 85, 5e-4)
                .value("temperature when full, °C", 76, full, 0.5);
    }
}
