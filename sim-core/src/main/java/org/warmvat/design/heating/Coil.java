package org.warmvat.design.heating;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * A heating coil in the contents (equation 5.4).
 *
 * @param areaM2 outer area, m2
 * @param uWPerM2K clean coefficient while the mixer runs, W/(m2 K)
 * @param statedStillWPerM2K clean coefficient while the mixer stands still, W/(m2 K); absent: as while it runs
 * @param foulingM2KPerW fouling resistance, m2 K/W
 */
public record Coil(
        @Key(name = "area_m2", says = "Outer area of the coil", range = "0.001 to 100 m2")
        double areaM2,

        @Key(
                name = "u_w_m2k",
                says = "Clean heat transfer coefficient while the mixer runs",
                range = "1 to 5000 W/m2K",
                usual = "100")
        double uWPerM2K,

        @Key(
                name = "u_still_w_m2k",
                says = "The same while the mixer stands still",
                range = "1 to 5000 W/m2K",
                otherwise = "as u_w_m2k")
        Optional<Double> statedStillWPerM2K,

        @Key(
                name = "fouling_m2k_w",
                says = "Fouling resistance on the slurry's side",
                range = "0 to 0.1 m2K/W",
                usual = "0.0005")
        double foulingM2KPerW) {

    /** Refuses numbers out of range. */
    public Coil {
        Ranges.check(Coil.class, areaM2, uWPerM2K, statedStillWPerM2K, foulingM2KPerW);
    }

    /** Conductance with fouling, W/K: {@code U A/(1 + U R_foul)}. */
    public double uaWPerK(boolean mixing) {
        double u = mixing ? uWPerM2K : statedStillWPerM2K.orElse(uWPerM2K);
        return u * areaM2 / (1 + u * foulingM2KPerW);
    }
}
