package org.warmvat.result;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Hourly series of a run: temperatures at the end of each hour in °C, powers as means over the hour in W. The arrays are
 * shared, not copied: read only.
 *
 * @param firstHourStart start of the first hour, local standard time
 * @param slurryC slurry
 * @param collectorC collector and loop, empty without a solar circuit
 * @param backupCircuitC backup water, empty without a backup circuit or with an immersed element
 * @param airC outdoor air
 * @param solarHeatW heat from the solar coil, empty without a solar circuit
 * @param backupHeatW heat from the backup coil or element, empty without a backup
 * @param lossW envelope (outer faces), edges, fittings and gas
 * @param feedW heat taken by feed and water
 * @param mixerElectricW mixer and drive
 * @param augerElectricW feed auger
 * @param otherElectricW shredder, pumps, air pump, electronics
 * @param methaneNm3PerH methane
 * @param collectorIrradianceWPerM2 total irradiance on the collector's plane, empty without a solar circuit
 */
public record Hourly(
        LocalDateTime firstHourStart,
        double[] slurryC,
        Optional<double[]> collectorC,
        Optional<double[]> backupCircuitC,
        double[] airC,
        Optional<double[]> solarHeatW,
        Optional<double[]> backupHeatW,
        double[] lossW,
        double[] feedW,
        double[] mixerElectricW,
        double[] augerElectricW,
        double[] otherElectricW,
        double[] methaneNm3PerH,
        Optional<double[]> collectorIrradianceWPerM2) {

    /** Number of hours. */
    public int hours() {
        return slurryC.length;
    }

    /** End of an hour, local standard time; the row ending at 00:00 on the 1st belongs to the month before. */
    public LocalDateTime end(int hour) {
        return firstHourStart.plusHours(hour + 1L);
    }
}
