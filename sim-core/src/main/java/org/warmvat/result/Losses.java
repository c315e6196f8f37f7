package org.warmvat.result;

/**
 * Heat lost through the envelope at its outer faces and through fittings over a period, kWh, positive outwards.
 *
 * @param wallKWh wetted wall, with all edges
 * @param dryWallKWh wall beside the headspace
 * @param lidKWh lid
 * @param floorKWh floor
 * @param fittingsKWh all fittings
 */
public record Losses(double wallKWh, double dryWallKWh, double lidKWh, double floorKWh, double fittingsKWh) {

    /** Envelope and fittings together, kWh. */
    public double totalKWh() {
        return wallKWh + dryWallKWh + lidKWh + floorKWh + fittingsKWh;
    }
}
