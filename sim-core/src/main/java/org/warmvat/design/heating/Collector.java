package org.warmvat.design.heating;

import java.util.OptionalDouble;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;
import org.warmvat.design.surroundings.Shading;

/**
 * A solar collector by its ISO 9806 coefficients (equation 5.1).
 *
 * @param areaM2 area the coefficients refer to, m2; 0 gives no heat
 * @param plane how it is set up
 * @param eta0 peak efficiency
 * @param a1WPerM2K linear loss, W/(m2 K)
 * @param a2WPerM2K2 quadratic loss, W/(m2 K2)
 * @param c5JPerM2K heat capacity, J/(m2 K)
 * @param incidence incidence modifiers
 * @param windAndSky what wind and sky add to the losses
 * @param shading what stands in its sky other than in the tank's
 */
public record Collector(
        @Key(
                name = "area_m2",
                says = "Collector area, gross or aperture as its data sheet counts it; 0 gives no heat",
                range = "0 to 1000 m2",
                usual = "2.0")
        double areaM2,

        @Key Mounting plane,

        @Key(name = "eta0", says = "Peak efficiency (ISO 9806)", range = "0 to 1", usual = "0.78")
        double eta0,

        @Key(name = "a1_w_m2k", says = "Linear loss coefficient (ISO 9806)", range = "0 to 50 W/m2K", usual = "3.6")
        double a1WPerM2K,

        @Key(
                name = "a2_w_m2k2",
                says = "Quadratic loss coefficient (ISO 9806)",
                range = "0 to 1 W/m2K2",
                usual = "0.012")
        double a2WPerM2K2,

        @Key(
                name = "c5_j_m2k",
                says = "Heat capacity of the collector (ISO 9806)",
                range = "0 to 200000 J/m2K",
                usual = "7000")
        double c5JPerM2K,

        @Key Incidence incidence,
        @Key WindAndSkyLoss windAndSky,
        @Key Shading.Own shading) {

    /** Refuses numbers out of range. */
    public Collector {
        Ranges.check(
                Collector.class, areaM2, plane, eta0, a1WPerM2K, a2WPerM2K2, c5JPerM2K, incidence, windAndSky, shading);
        double stillWPerM2K = a1WPerM2K - WindAndSkyLoss.REFERENCE_WIND_M_PER_S * windAndSky.a3JPerM3K();
        Ranges.stated(
                windAndSky.a3JPerM3K() == 0 || stillWPerM2K > 0,
                "a3_j_m3k",
                Shown.number(windAndSky.a3JPerM3K()) + ", expected below a third of a1_w_m2k, "
                        + Shown.number(a1WPerM2K) + ": the loss in still air");
    }

    /**
     * Incidence modifiers.
     *
     * @param stated modifier of the beam
     * @param statedKd modifier of diffuse light; {@value #FROM_BEAM}: the beam's, averaged over the sky; absent: 0.9 beside the
     *     formula, else from the beam
     */
    public record Incidence(
            @Key BeamModifier.Stated stated,

            @Key(
                    name = "kd",
                    says =
                            "Incidence modifier of diffuse light, or from_incidence: the beam's modifier averaged over the sky",
                    range = "0 to 1.5",
                    word = "from_incidence",
                    means = FROM_BEAM,
                    otherwise = "0.9 with b0, from_incidence with incidence")
            OptionalDouble statedKd) {

        /** Stands for the beam's modifier, averaged over the sky (equation 13.3). */
        static final double FROM_BEAM = -1;

        private static final double USUAL_KD = 0.9;

        /** Refuses numbers out of range. */
        public Incidence {
            Ranges.check(Incidence.class, stated, statedKd);
        }

        /** Modifier of the beam. */
        public BeamModifier beam() {
            return stated.modifier();
        }

        /** Modifier of diffuse light; empty: the beam's, averaged over the sky (equation 13.3). */
        public OptionalDouble kd() {
            double usual = stated instanceof BeamModifier.Formula ? USUAL_KD : FROM_BEAM;
            double kd = statedKd.orElse(usual);
            return kd == FROM_BEAM ? OptionalDouble.empty() : OptionalDouble.of(kd);
        }
    }
}
