package org.warmvat.design.heating;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * Collector, loop, pump control and coil.
 *
 * @param collector the collector
 * @param loop fluid, pipes, pump
 * @param pumpControl when the pump runs
 * @param coil the coil in the contents
 * @param stagnationC collector temperature above which an hour counts as stagnation, C
 * @param cakingC coil inlet temperature above which slurry may cake on the coil, C
 */
public record SolarCircuit(
        @Key Collector collector,
        @Key SolarLoop loop,
        @Key PumpControl pumpControl,

        @Key(name = "coil", says = "Coil in the contents", usual = "{area_m2: 1.0}")
        Coil coil,

        @Key(
                name = "stagnation_c",
                says = "Collector temperature above which an hour counts as stagnation",
                range = "50 to 300 C",
                usual = "110")
        double stagnationC,

        @Key(
                name = "caking_c",
                says = "Coil inlet water above which slurry may bake on the coil; such hours are counted",
                range = "20 to 150 C",
                usual = "55")
        double cakingC) {

    /** Refuses numbers out of range and a circuit without any heat capacity. */
    public SolarCircuit {
        Ranges.check(SolarCircuit.class, collector, loop, pumpControl, coil, stagnationC, cakingC);
        Ranges.stated(
                collector.areaM2() * collector.c5JPerM2K() + loop.capacityJPerK() >= 1,
                "loop_capacity_j_k",
                Shown.number(loop.capacityJPerK()) + ", expected area_m2 x c5_j_m2k and this together at least 1 J/K");
    }

    /** Heat capacity of collector and loop {@code A c5 + C_loop}, J/K. */
    public double capacityJPerK() {
        return collector.areaM2() * collector.c5JPerM2K() + loop.capacityJPerK();
    }
}
