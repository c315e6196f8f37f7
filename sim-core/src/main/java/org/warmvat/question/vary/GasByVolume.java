package org.warmvat.question.vary;

import org.warmvat.design.Design;
import org.warmvat.design.feeding.Feedstock;

/** Methane at steady state as it depends on the tank's volume, and how hard the volume is fed (equations 7.1 to 7.3). */
public final class GasByVolume {

    /** Common practice, no source: small stirred tanks near 35 °C are mostly kept below this, kg VS/(m3 day). */
    public static final double USUAL_MOST_LOADING = 3.0;

    private static final double USUAL_C = 35;
    private static final double LARGEST = 1e4;
    private static final int HALVINGS = 60;

    private GasByVolume() {}

    /** Methane a day at steady state and some slurry temperature in the design's own volume, Nm3. */
    public static double methaneNm3PerDay(Design design, double celsius) {
        return methane(design, 1, celsius);
    }

    /**
     * Volume that would make a given methane from the same feed at the design's set-point, m3; infinite where no volume, or none
     * up to ten thousand times the design's, would.
     *
     * @param methaneNm3PerDay the methane wanted, Nm3 a day
     */
    public static double volumeForM3(Design design, double methaneNm3PerDay) {
        double volumeM3 = design.tank().liquidVolumeM3();
        if (methaneNm3PerDay <= 0 || methane(design, LARGEST, design.control().setpointC()) < methaneNm3PerDay) {
            return methaneNm3PerDay <= 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        // halved in the logarithm, since the answer may be a tenth or a thousand times the design's volume
        double less = 1 / LARGEST;
        double more = LARGEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(less * more);
            if (methane(design, middle, design.control().setpointC()) < methaneNm3PerDay) {
                less = middle;
            } else {
                more = middle;
            }
        }
        return more * volumeM3;
    }

    /** Loading from which a caution is due at the set-point: the usual most, lowered as digestion slows, kg VS/(m3 day). */
    public static double cautiousLoading(Design design) {
        double usual = design.gas().map(gas -> gas.rateFactor(USUAL_C)).orElse(1.0);
        double here = design.gas()
                .map(gas -> gas.rateFactor(design.control().setpointC()))
                .orElse(1.0);
        return usual > 0 ? USUAL_MOST_LOADING * here / usual : USUAL_MOST_LOADING;
    }

    /** Volatile solids fed per volume, kg VS/(m3 day). */
    public static double loading(Design design) {
        return design.feed().feedstocks().stream()
                        .mapToDouble(Feedstock::volatileSolidsKgPerDay)
                        .sum()
                / design.tank().liquidVolumeM3();
    }

    private static double methane(Design design, double volumes, double celsius) {
        double washoutPerDay = design.feed().totalKgPerDay() / (design.contentsKg() * volumes);
        double factor = design.gas().map(gas -> gas.rateFactor(celsius)).orElse(0.0);
        double methane = 0;
        for (Feedstock stock : design.feed().feedstocks()) {
            double rate = stock.ratePerDay() * factor;
            if (rate > 0) {
                methane += stock.methaneNm3PerKgVs() * stock.volatileSolidsKgPerDay() * rate / (rate + washoutPerDay);
            }
        }
        return methane;
    }
}
