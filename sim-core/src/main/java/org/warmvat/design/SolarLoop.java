package org.warmvat.design;

/**
 * Fluid, pipes and pump between collector and coil.
 *
 * @param flowKgPerS flow while the pump runs, kg/s, above 0 and up to 10
 * @param fluidJPerKgK specific heat of the fluid, J/(kg K), 1000..5000
 * @param freezesC freezing point of the fluid, C, -80..10
 * @param capacityJPerK heat capacity of fluid and pipes beside the collector, J/K, 0..1e8
 * @param pipeUaWPerK loss of the pipes to outside air, W/K, 0..1000
 * @param pumpW electric power of the pump, W, 0..5000
 */
public record SolarLoop(
        double flowKgPerS,
        double fluidJPerKgK,
        double freezesC,
        double capacityJPerK,
        double pipeUaWPerK,
        double pumpW) {

    /** Refuses numbers out of range. */
    public SolarLoop {
        Ranges.above("solar loop flow in kg/s", flowKgPerS, 0, 10);
        Ranges.within("specific heat of the loop fluid in J/kgK", fluidJPerKgK, 1000, 5000);
        Ranges.within("freezing point of the loop fluid in C", freezesC, -80, 10);
        Ranges.within("heat capacity of the solar loop in J/K", capacityJPerK, 0, 1e8);
        Ranges.within("loss of the solar pipes in W/K", pipeUaWPerK, 0, 1000);
        Ranges.within("solar pump in W", pumpW, 0, 5000);
    }

    /** Heat-capacity rate of the flow, W/K. */
    public double capacityRateWPerK() {
        return flowKgPerS * fluidJPerKgK;
    }
}
