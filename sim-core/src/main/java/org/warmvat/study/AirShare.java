package org.warmvat.study;

import java.util.Optional;
import org.warmvat.design.AirDosing;
import org.warmvat.design.Design;
import org.warmvat.design.Gas;
import org.warmvat.gas.GasPart;

/** Share of dosed air, air over dry biogas in Nm3, hour by hour (equation 7.4). */
final class AirShare {

    private AirShare() {}

    /** Shares by hour; infinite in an hour without gas; no entries when no air is dosed. */
    static double[] byHour(Design design, HourLog log) {
        Optional<AirDosing> dosing = design.gas().flatMap(Gas::airDosing);
        double airNm3PerH = dosing.map(GasPart::dosedAirNm3PerH).orElse(0.0);
        if (airNm3PerH == 0) {
            return new double[0];
        }
        double methaneFraction = design.gas().orElseThrow().methaneFraction();
        double[] share = log.meter(GasPart.METHANE).clone();
        for (int hour = 0; hour < share.length; hour++) {
            double biogas = share[hour] / methaneFraction;
            share[hour] = biogas > 0 ? airNm3PerH / biogas : Double.POSITIVE_INFINITY;
        }
        return share;
    }

    /** Hours of a span whose share is above the design's warning mark. */
    static int hoursAboveLimit(Design design, double[] share, int from, int to) {
        double limit = warningShare(design);
        int count = 0;
        for (int hour = from; hour < to && hour < share.length; hour++) {
            if (share[hour] > limit) {
                count++;
            }
        }
        return count;
    }

    /** Share of air from which a warning is given. */
    static double warningShare(Design design) {
        return design.gas().flatMap(Gas::airDosing).map(AirDosing::warningShare).orElse(Double.POSITIVE_INFINITY);
    }
}
