package org.warmvat.heating;

import org.warmvat.design.Collector;

/**
 * What a collector loses to the air (equation 5.1; coefficients as in ISO 9806).
 *
 * @param collector the collector
 */
public record CollectorHeat(Collector collector) {

    /** Linear loss of the whole collector, W/K. */
    public double linearWPerK() {
        return collector.areaM2() * collector.a1WPerM2K();
    }

    /** Quadratic loss of the whole collector, W/K2. */
    public double quadraticWPerK2() {
        return collector.areaM2() * collector.a2WPerM2K2();
    }
}
