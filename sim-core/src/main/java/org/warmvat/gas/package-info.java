/**
 * Biodegradable solids, methane, heat carried off by the gas, air dosing (model sections 3.4 and 7).
 *
 * <p>Entry type: {@link org.warmvat.gas.GasPart}. Left out: inhibition, upsets, what lives in the tank; the rate knows only
 * temperature.
 */
package org.warmvat.gas;
