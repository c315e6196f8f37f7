package org.warmvat.design.tank;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * What is done with what leaves the tank.
 *
 * @param separatorWhPerKg electricity of a fibre separator per kg of effluent, Wh/kg
 */
public record Effluent(
        @Key(
                name = "separator_wh_per_kg",
                says = "Electricity of a fibre separator per kg of effluent, drawn evenly with the feed",
                range = "0 to 1000 Wh/kg",
                usual = "0")
        double separatorWhPerKg) {

    /** Refuses a number out of range. */
    public Effluent {
        Ranges.check(Effluent.class, separatorWhPerKg);
    }
}
