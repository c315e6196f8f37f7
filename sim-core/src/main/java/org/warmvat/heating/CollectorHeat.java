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

    /** Heat received by the quadratic term at a difference to the air, W: negative when warmer than the air. */
    public double quadraticW(double differenceK) {
        return -collector.areaM2() * collector.a2WPerM2K2() * differenceK * Math.abs(differenceK);
    }

    /** Slope of {@link #quadraticW} by the collector's temperature, W/K. */
    public double quadraticSlopeWPerK(double differenceK) {
        return -2 * collector.areaM2() * collector.a2WPerM2K2() * Math.abs(differenceK);
    }

    /** How fast that slope changes with the collector's temperature, W/K2. */
    public double quadraticBendWPerK2(double differenceK) {
        return -2 * collector.areaM2() * collector.a2WPerM2K2() * Math.signum(differenceK);
    }
}
