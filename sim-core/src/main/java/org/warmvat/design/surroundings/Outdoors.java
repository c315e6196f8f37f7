package org.warmvat.design.surroundings;

import org.warmvat.design.keys.Key;

/**
 * What the design says about the place beside its weather file.
 *
 * @param ground the ground
 * @param sky conventions about sun and sky
 * @param assumedWeather what is taken where the weather file is silent
 * @param surroundings what stands in the tank's sky, and in the collector's
 */
public record Outdoors(
        @Key(name = "ground", says = "The ground around the tank", usual = "{}")
        Ground ground,

        @Key(name = "sky", says = "Conventions about sun and sky", usual = "{}")
        Sky sky,

        @Key(name = "assumed_weather", says = "What is taken where the weather file has no column", usual = "{}")
        AssumedWeather assumedWeather,

        @Key(
                name = "surroundings",
                says = "What stands in the sky of tank and collector: horizon and trees",
                usual = "{}",
                quiet = true)
        Shading surroundings) {}
