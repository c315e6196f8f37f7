package org.warmvat.design.heating;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * What wind and sky add to a collector's losses (equation 13.4; coefficients of ISO 9806:2017). All 0 leaves equation 5.1.
 *
 * @param a3JPerM3K loss that grows with the wind, J/(m3 K)
 * @param a4 exchange with the sky
 * @param a6SPerM sun taken less with the wind, s/m
 * @param exposureFactor wind at the collector over the file's wind at 10 m
 * @param omitted coefficients of a data sheet that are not computed
 */
public record WindAndSkyLoss(
        @Key(name = "a3_j_m3k", says = "Loss that grows with the wind (ISO 9806)", range = "0 to 20 J/m3K", usual = "0")
        double a3JPerM3K,

        @Key(name = "a4", says = "Exchange with the sky (ISO 9806)", range = "0 to 1", usual = "0")
        double a4,

        @Key(name = "a6_s_m", says = "Sun taken less with the wind (ISO 9806)", range = "0 to 0.3 s/m", usual = "0")
        double a6SPerM,

        @Key(
                name = "exposure_factor",
                says = "Wind at the collector over the file's wind at 10 m, for a3 and a6",
                range = "0 to 1.5",
                usual = "0.5")
        double exposureFactor,

        @Key Omitted omitted) {

    /** Wind at which a1 and eta0 hold, m/s. */
    public static final double REFERENCE_WIND_M_PER_S = 3;

    /** Refuses numbers out of range. */
    public WindAndSkyLoss {
        Ranges.check(WindAndSkyLoss.class, a3JPerM3K, a4, a6SPerM, exposureFactor, omitted);
    }

    /** Whether nothing is added. */
    public boolean isNone() {
        return a3JPerM3K == 0 && a4 == 0 && a6SPerM == 0;
    }

    /**
     * Coefficients of ISO 9806 that make less than 1 per cent at a digester's temperatures and are refused unless 0.
     *
     * @param a7SPerM wind in the exchange with the sky, s/m
     * @param a8WPerM2K4 loss with the fourth power, W/(m2 K4)
     */
    public record Omitted(
            @Key(
                    name = "a7_s_m",
                    says =
                            "Wind in the exchange with the sky (ISO 9806): below 1 % here and not computed, so that only 0 is taken",
                    range = "0 to 0 s/m")
            Optional<Double> a7SPerM,

            @Key(
                    name = "a8_w_m2k4",
                    says =
                            "Loss with the fourth power (ISO 9806): below 1 % here and not computed, so that only 0 is taken",
                    range = "0 to 0 W/m2K4")
            Optional<Double> a8WPerM2K4) {

        /** Refuses anything but 0. */
        public Omitted {
            Ranges.check(Omitted.class, a7SPerM, a8WPerM2K4);
        }
    }
}
