package org.warmvat.design.gas;

import org.warmvat.design.keys.Key;
import org.warmvat.design.keys.Ranges;
import org.warmvat.design.keys.Shown;

/**
 * The temperatures between which digestion runs, and the relative rate between them (equation 7.3).
 *
 * <p>Source: Rosso, Lobry and Flandrois (1993), "An unexpected correlation between cardinal temperatures of microbial growth
 * highlighted by a new model", J. Theor. Biol. 162. The function needs {@code best > (least + most)/2}.
 *
 * @param leastC minimum: at and below it nothing grows, C
 * @param bestC optimum: fastest, C
 * @param mostC maximum: at and above it nothing grows, C
 */
public record CardinalTemperatures(
        @Key(
                name = "least",
                says = "Minimum of digestion: at and below it nothing grows",
                range = "-20 to 120 C",
                usual = "8")
        double leastC,

        @Key(
                name = "best",
                says = "Optimum: digestion is fastest; must be above the mean of least and most",
                range = "-20 to 120 C",
                usual = "38")
        double bestC,

        @Key(name = "most", says = "Maximum: at and above it nothing grows", range = "-20 to 120 C", usual = "46")
        double mostC) {

    /** Refuses temperatures out of order, out of range or with the best in the lower half. */
    public CardinalTemperatures {
        Ranges.check(CardinalTemperatures.class, leastC, bestC, mostC);
        Ranges.stated(
                leastC < mostC, "least", Shown.number(leastC) + ", expected below most, " + Shown.number(mostC) + " C");
        double mean = (leastC + mostC) / 2;
        Ranges.stated(
                bestC > mean && bestC < mostC,
                "best",
                Shown.number(bestC) + ", expected above the mean of least and most, " + Shown.number(mean)
                        + " C, and below most, " + Shown.number(mostC) + " C");
    }

    /** Relative rate f(T), 0..1: 1 at the best temperature, 0 outside least..most. */
    public double relativeRate(double celsius) {
        if (celsius <= leastC || celsius >= mostC) {
            return 0;
        }
        double fromLeast = celsius - leastC;
        double span = bestC - leastC;
        double bracket = span * (celsius - bestC) - (bestC - mostC) * (bestC + leastC - 2 * celsius);
        return (celsius - mostC) * fromLeast * fromLeast / (span * bracket);
    }

    /** Derivative of {@link #relativeRate} by the temperature, 1/K; 0 outside least..most. */
    public double relativeRateSlopePerK(double celsius) {
        if (celsius <= leastC || celsius >= mostC) {
            return 0;
        }
        double fromLeast = celsius - leastC;
        double span = bestC - leastC;
        double bracket = span * (celsius - bestC) - (bestC - mostC) * (bestC + leastC - 2 * celsius);
        double bracketPerK = span + 2 * (bestC - mostC);
        return (fromLeast * fromLeast + 2 * (celsius - mostC) * fromLeast - relativeRate(celsius) * span * bracketPerK)
                / (span * bracket);
    }
}
