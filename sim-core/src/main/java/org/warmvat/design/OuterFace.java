package org.warmvat.design;

/**
 * The outermost face of walls and lid.
 *
 * @param absorptance share of sunlight taken up, 0..1
 * @param emissivity long-wave emissivity, 0..1
 */
public record OuterFace(double absorptance, double emissivity) {

    /** Refuses fractions out of range. */
    public OuterFace {
        Ranges.within("outer absorptance", absorptance, 0, 1);
        Ranges.within("outer emissivity", emissivity, 0, 1);
    }
}
