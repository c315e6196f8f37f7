package org.warmvat.design;

/**
 * Collector, loop, pump control and coil.
 *
 * @param collector the collector
 * @param loop fluid, pipes, pump
 * @param pumpControl when the pump runs
 * @param coil the coil in the contents
 * @param stagnationC collector temperature above which an hour counts as stagnation, C, 50..300
 * @param cakingC coil inlet temperature above which slurry may cake on the coil, C, 20..150
 */
public record SolarCircuit(
        Collector collector, SolarLoop loop, PumpControl pumpControl, Coil coil, double stagnationC, double cakingC) {

    /** Refuses numbers out of range and a circuit without any heat capacity. */
    public SolarCircuit {
        Ranges.within("stagnation in C", stagnationC, 50, 300);
        Ranges.within("caking in C", cakingC, 20, 150);
        Ranges.stated(
                "heat capacity of collector and loop 0 J/K",
                collector.areaM2() * collector.c5JPerM2K() + loop.capacityJPerK() >= 1,
                "at least 1 J/K");
    }

    /** Heat capacity of collector and loop {@code A c5 + C_loop}, J/K. */
    public double capacityJPerK() {
        return collector.areaM2() * collector.c5JPerM2K() + loop.capacityJPerK();
    }
}
