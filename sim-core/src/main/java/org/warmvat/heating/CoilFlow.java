package org.warmvat.heating;

import org.warmvat.design.heating.Coil;

/**
 * A coil fed at a flow: what it passes per kelvin between the circuit's mean temperature and the slurry (equations 5.2 and
 * 5.4; the effectiveness of a coil in a mixed vessel: Incropera and others, Fundamentals of Heat and Mass Transfer, section
 * 11.4).
 *
 * @param coil the coil
 * @param adjust factor on its conductance, 1 as drawn
 * @param capacityRateWPerK heat-capacity rate of the flow, W/K
 */
public record CoilFlow(Coil coil, double adjust, double capacityRateWPerK) {

    /** Effectiveness {@code 1 - exp(-UA/mc)}, 0 to 1. */
    public double effectiveness(boolean mixing) {
        return 1 - Math.exp(-adjust * coil.uaWPerK(mixing) / capacityRateWPerK);
    }

    /**
     * Conductance {@code g = e mc/(1 - e/2)} from the circuit's mean temperature, which sits midway between the coil's inlet and
     * outlet, to the slurry, W/K.
     */
    public double conductanceWPerK(boolean mixing) {
        double e = effectiveness(mixing);
        return e * capacityRateWPerK / (1 - e / 2);
    }

    /**
     * Water temperature at the coil's inlet, °C: the mean and half the fall through the coil of the heat that enters the circuit at that
     * instant, as far as the coil passes it. What it passes beyond comes out of the circuit's own store, which can make no water hotter
     * than itself (equation 19.1).
     *
     * @param meanC mean of the circuit
     * @param passedW heat that the coil passes
     * @param enteringW heat that enters the circuit less what it loses elsewhere
     */
    public double inletC(double meanC, double passedW, double enteringW) {
        return meanC + Math.max(0, Math.min(passedW, enteringW)) / (2 * capacityRateWPerK);
    }
}
