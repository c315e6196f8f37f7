package org.warmvat.result;

/**
 * Hours (time integrals) and starts counted over a period.
 *
 * @param belowFloorHours slurry below the stated floor temperature
 * @param stagnationHours collector above its stagnation mark
 * @param solarCakingHours solar coil inlet above the caking mark with the pump on
 * @param backupCakingHours backup coil inlet above the caking mark with the pump on
 * @param loopFrozenHours loop fluid below its freezing point
 * @param coldPipeEndHours hours with the coldest end of an insulated pipe fitting below 0 °C
 * @param solarPumpStarts starts of the solar pump
 * @param backupStarts starts of the backup circuit's pump (of the element, when immersed)
 * @param airShareAboveLimitHours hours whose dosed air is above 6 % of the dry biogas
 */
public record Counts(
        double belowFloorHours,
        double stagnationHours,
        double solarCakingHours,
        double backupCakingHours,
        double loopFrozenHours,
        double coldPipeEndHours,
        int solarPumpStarts,
        int backupStarts,
        double airShareAboveLimitHours) {}
