package org.warmvat.result;

import java.util.Optional;

/**
 * Marks of a design against which a run is read.
 *
 * @param setpointC set-point of the slurry
 * @param floorC floor temperature; a time below it is short
 * @param liquidVolumeM3 volume of the contents
 * @param hasSolar whether there is a solar circuit
 * @param backup what the backup heater is fed with, empty without one
 * @param hasGas whether gas is computed
 * @param primaryEnergyFactor weight of electricity in the weighted net energy
 * @param tariff prices and carbon
 */
public record Marks(
        double setpointC,
        double floorC,
        double liquidVolumeM3,
        boolean hasSolar,
        Optional<BoughtEnergy> backup,
        boolean hasGas,
        double primaryEnergyFactor,
        Tariff tariff) {

    /** Whether there is a backup heater. */
    public boolean hasBackup() {
        return backup.isPresent();
    }
}
