package org.warmvat.tank;

import java.util.Optional;
import org.warmvat.network.KnownRate;

/**
 * What is known to have gone into a tank, in place of what its design would have done (model equation 16.2).
 *
 * @param solarHeatW heat into the slurry in place of the solar circuit
 * @param backupHeatW heat into the slurry in place of the backup heater
 * @param backupPowerW power into the water of the backup circuit in place of its burner
 * @param feedKgPerS feed with its water, in place of the feeding times
 * @param mixerShare share of the time in which the mixer turned, in place of its running times
 * @param airIsRoom whether the air of the weather is that of the room in which the tank stands
 */
public record Supplied(
        Optional<KnownRate> solarHeatW,
        Optional<KnownRate> backupHeatW,
        Optional<KnownRate> backupPowerW,
        Optional<KnownRate> feedKgPerS,
        Optional<KnownRate> mixerShare,
        boolean airIsRoom) {

    /** All as the design does it. */
    public static final Supplied BY_DESIGN = new Supplied(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false);

    /** The same with a known heat in place of the backup heater. */
    public Supplied withBackupHeat(KnownRate watts) {
        return new Supplied(solarHeatW, Optional.of(watts), Optional.empty(), feedKgPerS, mixerShare, airIsRoom);
    }
}
