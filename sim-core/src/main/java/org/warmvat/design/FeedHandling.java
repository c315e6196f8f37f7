package org.warmvat.design;

/**
 * How feed is moved, cut and kept.
 *
 * @param augerWhPerKg electricity of the auger per kg of feedstock, Wh/kg, 0..1000 (equation 3.3)
 * @param shredderWhPerKg electricity of the shredder per kg of feedstock, Wh/kg, 0..1000
 * @param exchangerEffectiveness effectiveness of the effluent-to-feed exchanger, 0..1, 0 for none (equation 3.1)
 * @param mayFreeze whether feed and water may stand below 0 C
 * @param freezingRangeK kelvin below 0 C over which the feed's water turns to ice, above 0 and up to 20
 */
public record FeedHandling(
        double augerWhPerKg,
        double shredderWhPerKg,
        double exchangerEffectiveness,
        boolean mayFreeze,
        double freezingRangeK) {

    /** Refuses numbers out of range. */
    public FeedHandling {
        Ranges.within("auger in Wh/kg", augerWhPerKg, 0, 1000);
        Ranges.within("shredder in Wh/kg", shredderWhPerKg, 0, 1000);
        Ranges.within("effectiveness of the effluent exchanger", exchangerEffectiveness, 0, 1);
        Ranges.above("freezing range in K", freezingRangeK, 0, 20);
    }
}
