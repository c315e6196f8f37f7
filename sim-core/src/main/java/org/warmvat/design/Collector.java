package org.warmvat.design;

/**
 * A solar collector by its ISO 9806 coefficients (equation 5.1).
 *
 * @param areaM2 area the coefficients refer to, m2, 0..1000; 0 gives no heat
 * @param plane how it is set up
 * @param eta0 peak efficiency, 0..1
 * @param a1WPerM2K linear loss, W/(m2 K), 0..50
 * @param a2WPerM2K2 quadratic loss, W/(m2 K2), 0..1
 * @param c5JPerM2K heat capacity, J/(m2 K), 0..200000
 * @param incidence incidence modifiers
 */
public record Collector(
        double areaM2,
        Plane plane,
        double eta0,
        double a1WPerM2K,
        double a2WPerM2K2,
        double c5JPerM2K,
        Incidence incidence) {

    /** Refuses numbers out of range. */
    public Collector {
        Ranges.within("collector area in m2", areaM2, 0, 1000);
        Ranges.within("eta0", eta0, 0, 1);
        Ranges.within("a1 in W/m2K", a1WPerM2K, 0, 50);
        Ranges.within("a2 in W/m2K2", a2WPerM2K2, 0, 1);
        Ranges.within("c5 in J/m2K", c5JPerM2K, 0, 200_000);
    }

    /**
     * Incidence modifiers.
     *
     * @param b0 of the beam modifier {@code 1 - b0 (1/cos th - 1)}, 0..1
     * @param kd diffuse modifier, 0..1.5
     * @param limitDeg angle of incidence past which the beam counts nothing, degrees, 30..90
     */
    public record Incidence(double b0, double kd, double limitDeg) {

        /** Refuses numbers out of range. */
        public Incidence {
            Ranges.within("b0", b0, 0, 1);
            Ranges.within("kd", kd, 0, 1.5);
            Ranges.within("incidence limit in degrees", limitDeg, 30, 90);
        }
    }
}
