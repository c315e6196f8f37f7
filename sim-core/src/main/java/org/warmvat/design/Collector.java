package org.warmvat.design;

import java.util.OptionalDouble;

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
 * @param windAndSky what wind and sky add to the losses
 * @param shading what stands in its sky
 */
public record Collector(
        double areaM2,
        Plane plane,
        double eta0,
        double a1WPerM2K,
        double a2WPerM2K2,
        double c5JPerM2K,
        Incidence incidence,
        WindAndSkyLoss windAndSky,
        Shading shading) {

    /** Refuses numbers out of range. */
    public Collector {
        Ranges.within("collector area in m2", areaM2, 0, 1000);
        Ranges.within("eta0", eta0, 0, 1);
        Ranges.within("a1 in W/m2K", a1WPerM2K, 0, 50);
        Ranges.within("a2 in W/m2K2", a2WPerM2K2, 0, 1);
        Ranges.within("c5 in J/m2K", c5JPerM2K, 0, 200_000);
        double stillWPerM2K = a1WPerM2K - WindAndSkyLoss.REFERENCE_WIND_M_PER_S * windAndSky.a3JPerM3K();
        Ranges.stated(
                "a1 - 3 a3 " + Ranges.text(stillWPerM2K) + " W/m2K",
                windAndSky.a3JPerM3K() == 0 || stillWPerM2K > 0,
                "above 0: the loss in still air");
    }

    /** A collector in an open place, whose losses know neither wind nor sky. */
    public Collector(
            double areaM2,
            Plane plane,
            double eta0,
            double a1WPerM2K,
            double a2WPerM2K2,
            double c5JPerM2K,
            Incidence incidence) {
        this(areaM2, plane, eta0, a1WPerM2K, a2WPerM2K2, c5JPerM2K, incidence, WindAndSkyLoss.NONE, Shading.NONE);
    }

    /** The same of another area. */
    public Collector withAreaM2(double otherM2) {
        return new Collector(otherM2, plane, eta0, a1WPerM2K, a2WPerM2K2, c5JPerM2K, incidence, windAndSky, shading);
    }

    /**
     * Incidence modifiers.
     *
     * @param beam modifier of the beam
     * @param kd modifier of diffuse light, 0..1.5; empty: the beam's, averaged over the sky (equation 13.3)
     */
    public record Incidence(BeamModifier beam, OptionalDouble kd) {

        /** Refuses numbers out of range. */
        public Incidence {
            kd.ifPresent(k -> Ranges.within("kd", k, 0, 1.5));
        }

        /**
         * The usual formula with a stated modifier of diffuse light.
         *
         * @param b0 of the beam modifier {@code 1 - b0 (1/cos th - 1)}, 0..1
         * @param kd modifier of diffuse light, 0..1.5
         * @param limitDeg angle of incidence past which the beam counts nothing, degrees, 30..90
         */
        public Incidence(double b0, double kd, double limitDeg) {
            this(new BeamModifier.Formula(b0, limitDeg), OptionalDouble.of(kd));
        }
    }
}
