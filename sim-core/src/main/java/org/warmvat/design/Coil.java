package org.warmvat.design;

/**
 * A heating coil in the contents (equation 5.4).
 *
 * @param areaM2 outer area, m2, above 0 and up to 100
 * @param uWPerM2K clean coefficient while the mixer runs, W/(m2 K), 1..5000
 * @param uStillWPerM2K clean coefficient while the mixer stands still, W/(m2 K), 1..5000
 * @param foulingM2KPerW fouling resistance, m2 K/W, 0..0.1
 */
public record Coil(double areaM2, double uWPerM2K, double uStillWPerM2K, double foulingM2KPerW) {

    /** Refuses numbers out of range. */
    public Coil {
        Ranges.above("coil area in m2", areaM2, 0, 100);
        Ranges.within("coil coefficient in W/m2K", uWPerM2K, 1, 5000);
        Ranges.within("coil coefficient without mixing in W/m2K", uStillWPerM2K, 1, 5000);
        Ranges.within("fouling resistance in m2K/W", foulingM2KPerW, 0, 0.1);
    }

    /** Conductance with fouling, W/K: {@code U A/(1 + U R_foul)}. */
    public double uaWPerK(boolean mixing) {
        double u = mixing ? uWPerM2K : uStillWPerM2K;
        return u * areaM2 / (1 + u * foulingM2KPerW);
    }
}
