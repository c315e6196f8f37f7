package org.warmvat.result;

/**
 * Slurry temperature over a period, °C.
 *
 * @param leastC lowest
 * @param meanC mean over time
 * @param mostC highest
 */
public record SlurryTemperature(double leastC, double meanC, double mostC) {}
