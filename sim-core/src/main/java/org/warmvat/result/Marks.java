package org.warmvat.result;

/**
 * Marks of a design against which a run is read.
 *
 * @param setpointC set-point of the slurry
 * @param floorC floor temperature; a time below it is short
 * @param liquidVolumeM3 volume of the contents
 * @param hasSolar whether there is a solar circuit
 * @param hasBackup whether there is a backup heater
 * @param hasGas whether gas is computed
 */
public record Marks(
        double setpointC, double floorC, double liquidVolumeM3, boolean hasSolar, boolean hasBackup, boolean hasGas) {}
