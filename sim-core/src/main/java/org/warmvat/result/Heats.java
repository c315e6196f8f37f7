package org.warmvat.result;

/**
 * Heat exchanged by the slurry over a period, kWh.
 *
 * @param solarKWh heat given by the solar coil
 * @param backupKWh heat given by the backup coil or the immersed element
 * @param shaftKWh heat of the mixer's shaft
 * @param reactionKWh heat of the reaction
 * @param feedKWh heat taken by the feed and dilution water, net of the effluent exchanger (a loss, positive)
 * @param gasKWh vapour and sensible heat carried off by the gas (a loss, positive)
 */
public record Heats(
        double solarKWh, double backupKWh, double shaftKWh, double reactionKWh, double feedKWh, double gasKWh) {}
