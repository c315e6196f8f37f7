package org.warmvat.design.feeding;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * Water fed together with the feedstocks.
 *
 * @param kgPerDay mass, kg/day
 * @param temperature how warm
 */
public record DilutionWater(
        @Key(name = "kg_per_day", says = "Water fed each day", range = "0 to 100000 kg/day", usual = "10")
        double kgPerDay,

        @Key(name = "temperature", says = "How warm it is: air, ground, room or fixed", usual = "{fixed_c: 10}")
        FeedTemperature temperature) {

    /** Refuses a mass out of range. */
    public DilutionWater {
        Ranges.check(DilutionWater.class, kgPerDay, temperature);
    }
}
