package org.warmvat.design.heating;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Pump and flow of a circuit.
 *
 * @param flowKgPerS flow while the pump runs, kg/s
 * @param pumpW electric power of the pump, W
 */
public record PumpedLoop(
        @Key(name = "loop_kg_s", says = "Flow while the pump runs", range = "0.0001 to 10 kg/s")
        double flowKgPerS,

        @Key(name = "pump_w", says = "Electric power of the pump", range = "0 to 5000 W")
        double pumpW) {

    /** Refuses numbers out of range. */
    public PumpedLoop {
        Ranges.check(PumpedLoop.class, flowKgPerS, pumpW);
    }
}
