package org.warmvat.result;

/**
 * Balances of the two heating circuits apart from what they gave to the slurry, kWh.
 *
 * @param collectorAbsorbedKWh sun absorbed by the collector (after its optical losses)
 * @param collectorLossKWh heat lost by the collector and the loop's pipes
 * @param backupPowerKWh heat put into the backup water (or the slurry, by an immersed element)
 * @param backupLossKWh heat lost by the backup circuit
 * @param backupBoughtKWh energy bought for it: power divided by efficiency
 */
public record Circuits(
        double collectorAbsorbedKWh,
        double collectorLossKWh,
        double backupPowerKWh,
        double backupLossKWh,
        double backupBoughtKWh) {}
