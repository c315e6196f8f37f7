package org.warmvat.design.envelope;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;

/**
 * The outermost face of walls and lid.
 *
 * @param absorptance share of sunlight taken up
 * @param emissivity long-wave emissivity
 */
public record OuterFace(
        @Key(
                name = "outer_absorptance",
                says = "Share of sunlight the outermost face takes up",
                range = "0 to 1",
                usual = "0.5")
        double absorptance,

        @Key(
                name = "outer_emissivity",
                says = "Long-wave emissivity of the outermost face",
                range = "0 to 1",
                usual = "0.9")
        double emissivity) {

    /** Refuses fractions out of range. */
    public OuterFace {
        Ranges.check(OuterFace.class, absorptance, emissivity);
    }
}
