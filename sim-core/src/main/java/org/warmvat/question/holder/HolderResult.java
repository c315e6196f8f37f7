package org.warmvat.question.holder;

import java.util.List;
import java.util.OptionalDouble;
import org.warmvat.network.Warning;

/**
 * Which gas holder serves the uses.
 *
 * @param allowedShare share of what is wanted that may stay unmet
 * @param smallestM3 the smallest that does, to one per cent; empty where 20 days' gas would not do
 * @param smallest the run with it, or with the largest tried
 * @param asDesigned the run with the design's own
 * @param daysGasM3 a day's gas, m3 in the holder
 * @param curve runs with holders around the smallest
 */
public record HolderResult(
        double allowedShare,
        OptionalDouble smallestM3,
        Year smallest,
        Year asDesigned,
        double daysGasM3,
        List<Year> curve) {

    /**
     * A run through the file with one holder.
     *
     * @param usefulM3 its useful volume
     * @param metKWh what the uses got
     * @param unmetKWh what they wanted and did not get
     * @param surplusNm3 gas that found no room
     * @param madeNm3PerDay dry biogas made a day, on the mean
     * @param warnings what the user must know of the run
     */
    public record Year(
            double usefulM3,
            double metKWh,
            double unmetKWh,
            double surplusNm3,
            double madeNm3PerDay,
            List<Warning> warnings) {

        /** Share of what is wanted that stays unmet; 0 where nothing is wanted. */
        public double unmetShare() {
            double wanted = metKWh + unmetKWh;
            return wanted == 0 ? 0 : unmetKWh / wanted;
        }
    }

    /** Takes the list as it is. */
    public HolderResult {
        curve = List.copyOf(curve);
    }
}
