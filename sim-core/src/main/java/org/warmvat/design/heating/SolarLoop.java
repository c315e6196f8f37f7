package org.warmvat.design.heating;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Fluid, pipes and pump between collector and coil.
 *
 * @param pumped flow and pump
 * @param fluidJPerKgK specific heat of the fluid, J/(kg K)
 * @param freezesC freezing point of the fluid, C
 * @param capacityJPerK heat capacity of fluid and pipes beside the collector, J/K
 * @param pipeUaWPerK loss of the pipes to outside air, W/K
 */
public record SolarLoop(
        @Key(usual = "{loop_kg_s: 0.04, pump_w: 12}") PumpedLoop pumped,

        @Key(
                name = "loop_fluid_j_kgk",
                says = "Specific heat of the loop fluid",
                range = "1000 to 5000 J/kgK",
                usual = "3700")
        double fluidJPerKgK,

        @Key(
                name = "loop_freezes_c",
                says = "Freezing point of the loop fluid; hours below it are counted",
                range = "-80 to 10 C",
                usual = "-20")
        double freezesC,

        @Key(
                name = "loop_capacity_j_k",
                says = "Heat capacity of fluid and pipes beside the collector",
                range = "0 to 1e8 J/K",
                usual = "9000")
        double capacityJPerK,

        @Key(
                name = "pipe_ua_w_k",
                says = "Loss of the loop's pipes to outside air",
                range = "0 to 1000 W/K",
                usual = "0.8")
        double pipeUaWPerK) {

    /** Refuses numbers out of range. */
    public SolarLoop {
        Ranges.check(SolarLoop.class, pumped, fluidJPerKgK, freezesC, capacityJPerK, pipeUaWPerK);
    }

    /** Heat-capacity rate of the flow, W/K. */
    public double capacityRateWPerK() {
        return pumped.flowKgPerS() * fluidJPerKgK;
    }

    /** Flow while the pump runs, kg/s. */
    public double flowKgPerS() {
        return pumped.flowKgPerS();
    }

    /** Electric power of the pump, W. */
    public double pumpW() {
        return pumped.pumpW();
    }
}
