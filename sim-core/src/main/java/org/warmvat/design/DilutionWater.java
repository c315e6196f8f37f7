package org.warmvat.design;

/**
 * Water fed together with the feedstocks.
 *
 * @param kgPerDay mass, kg/day, 0..100000
 * @param temperature how warm
 */
public record DilutionWater(double kgPerDay, FeedTemperature temperature) {

    /** Refuses a mass out of range. */
    public DilutionWater {
        Ranges.within("daily dilution water in kg", kgPerDay, 0, 100_000);
    }
}
