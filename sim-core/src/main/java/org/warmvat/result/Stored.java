package org.warmvat.result;

/**
 * Heat stored over a period, from the node temperatures at its two ends, kWh, positive when warmer at the end.
 *
 * @param slurryKWh in the slurry
 * @param envelopeKWh in the layers of the envelope
 * @param collectorKWh in collector and loop
 * @param backupCircuitKWh in the backup water
 */
public record Stored(double slurryKWh, double envelopeKWh, double collectorKWh, double backupCircuitKWh) {}
