package org.warmvat.design.surroundings;

import java.util.Optional;
import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * The ground around the tank.
 *
 * @param wave its yearly wave, if given; absent: fitted to the weather's air temperature
 * @param diffusivityM2PerDay thermal diffusivity, m2/day
 * @param depthM depth whose temperature counts for base and feed, m
 * @param reflectance of sunlight
 */
public record Ground(
        @Key(otherwise = "fitted to the weather's air temperature, with amplitude_k and coldest_day")
        Optional<GroundWave> wave,

        @Key(
                name = "diffusivity_m2_day",
                says = "Thermal diffusivity of the ground",
                range = "0.005 to 0.5 m2/day",
                usual = "0.05")
        double diffusivityM2PerDay,

        @Key(
                name = "depth_m",
                says = "Depth whose temperature counts for base, feed and water",
                range = "0 to 10 m",
                usual = "0.5")
        double depthM,

        @Key(
                name = "reflectance",
                says = "Share of sunlight the ground throws back; snow is far brighter",
                range = "0 to 1",
                usual = "0.2")
        double reflectance) {

    /** Refuses numbers out of range. */
    public Ground {
        Ranges.check(Ground.class, wave, diffusivityM2PerDay, depthM, reflectance);
    }
}
