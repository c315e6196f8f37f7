package org.warmvat.checks;

import java.util.Optional;
import org.warmvat.design.heating.Coil;
import org.warmvat.heating.CoilFlow;

/**
 * Published: F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 11.5: steam condenser, the case of a
 * coil in a vessel of one temperature. Outlet transcribed, length from memory. Conditions: 30 000 tubes of 25 mm in two passes,
 * 3e4 kg/s at 20 °C, steam 50 °C, films 7552 and 11 000 W/m2K; one tube taken. Tolerance: half the last printed digit; 2 GW to
 * its first three digits.
 */
class CondenserIncropera115Test implements Published {

    private static final double U_W_PER_M2K = 1 / (1 / 7552.0 + 1 / 11_000.0);
    private static final double RATE_W_PER_K = 4179;

    @Override
    public Source source() {
        return new Source(
                Topic.COILS,
                "Incropera",
                "F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, example 11.5; FOSSEE textbook companion,"
                        + " chapter 11.",
                "30 000 tubes of 25 mm, two passes of 4.51 m, 1 kg/s of 4179 J/kgK each, 20 °C in, steam 50 °C, films 7552 and 11 000"
                        + " W/m2K.",
                Source.HALF_DIGIT);
    }

    private static double effectiveness(double lengthM) {
        return new CoilFlow(
                        new Coil(Math.PI * 0.025 * 2 * lengthM, U_W_PER_M2K, Optional.of(U_W_PER_M2K), 0),
                        1,
                        RATE_W_PER_K)
                .effectiveness(true);
    }

    @Override
    public void fill(Sheet sheet) {
        double outletC = 20 + 30 * effectiveness(4.51);
        double length = Chains.solve(l -> RATE_W_PER_K * 30 * effectiveness(l) * 30_000, 2e9, 1, 9);
        sheet.table(Provenance.TRANSCRIBED).value("outlet, °C", 36.0, outletC, 0.05);
        sheet.table(Provenance.MEMORY).value("length for 2 GW, m", 4.51, length, 0.005);
    }
}
