package org.warmvat.design;

/**
 * What the design says about the place beside its weather file.
 *
 * @param ground the ground
 * @param sky conventions about sun and sky
 * @param assumedWeather what is taken where the weather file is silent
 */
public record Site(Ground ground, Sky sky, AssumedWeather assumedWeather) {}
