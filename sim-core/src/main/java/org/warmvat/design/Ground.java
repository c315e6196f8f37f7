package org.warmvat.design;

import java.util.Optional;

/**
 * The ground around the tank.
 *
 * @param wave its yearly wave, if given; absent: fitted to the weather's air temperature
 * @param diffusivityM2PerDay thermal diffusivity, m2/day, 0.005..0.5
 * @param depthM depth whose temperature counts for floor and feed, m, 0..10
 * @param reflectance of sunlight, 0..1
 */
public record Ground(Optional<GroundWave> wave, double diffusivityM2PerDay, double depthM, double reflectance) {

    /** Refuses numbers out of range. */
    public Ground {
        Ranges.within("diffusivity of the ground in m2/day", diffusivityM2PerDay, 0.005, 0.5);
        Ranges.within("depth in the ground in m", depthM, 0, 10);
        Ranges.within("reflectance of the ground", reflectance, 0, 1);
    }
}
