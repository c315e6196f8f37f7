package org.warmvat.design.feeding;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * How feed is moved, cut and kept.
 *
 * @param augerWhPerKg electricity of the auger per kg of feedstock, Wh/kg (equation 3.3)
 * @param shredderWhPerKg electricity of the shredder per kg of feedstock, Wh/kg
 * @param exchangerEffectiveness effectiveness of the effluent-to-feed exchanger, 0 for none (equation 3.1)
 * @param mayFreeze whether feed and water may stand below 0 C
 * @param freezingRangeK kelvin below 0 C over which the feed's water turns to ice
 */
public record FeedHandling(
        @Key(
                name = "auger_wh_per_kg",
                says = "Electricity of the auger per kg of feedstock, water left out",
                range = "0 to 1000 Wh/kg",
                usual = "4")
        double augerWhPerKg,

        @Key(
                name = "shredder_wh_per_kg",
                says = "Electricity of the shredder per kg of feedstock, water left out",
                range = "0 to 1000 Wh/kg",
                usual = "10")
        double shredderWhPerKg,

        @Key(
                name = "effluent_exchanger_effectiveness",
                says = "Effectiveness of an exchanger that warms the feed with the effluent; 0 for none",
                range = "0 to 1",
                usual = "0.0")
        double exchangerEffectiveness,

        @Key(
                name = "may_freeze",
                says = "Whether feed and water may stand below 0 C; false means kept from frost",
                usual = "true")
        boolean mayFreeze,

        @Key(
                name = "freezing_range_k",
                says = "Kelvin below 0 C over which the feed's water turns to ice",
                range = "0.01 to 20 K",
                usual = "2")
        double freezingRangeK) {

    /** Refuses numbers out of range. */
    public FeedHandling {
        Ranges.check(
                FeedHandling.class, augerWhPerKg, shredderWhPerKg, exchangerEffectiveness, mayFreeze, freezingRangeK);
    }
}
