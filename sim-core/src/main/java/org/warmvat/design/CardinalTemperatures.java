package org.warmvat.design;

/**
 * The temperatures between which digestion runs, and the relative rate between them (equation 7.3).
 *
 * <p>Source: Rosso, Lobry and Flandrois (1993), "An unexpected correlation between cardinal temperatures of microbial growth
 * highlighted by a new model", J. Theor. Biol. 162. The function needs {@code best > (least + most)/2}.
 *
 * @param leastC at and below it nothing grows, C, -20..best
 * @param bestC fastest, C
 * @param mostC at and above it nothing grows, C, best..120
 */
public record CardinalTemperatures(double leastC, double bestC, double mostC) {

    /** Refuses temperatures out of order, out of range or with the best in the lower half. */
    public CardinalTemperatures {
        Ranges.within("least temperature of digestion in C", leastC, -20, 120);
        Ranges.within("most temperature of digestion in C", mostC, leastC, 120);
        Ranges.stated("best temperature of digestion " + Ranges.text(bestC) + " C", bestC < mostC, "below the most");
        Ranges.stated(
                "best temperature of digestion " + Ranges.text(bestC) + " C",
                bestC > (leastC + mostC) / 2,
                "above the mean of least and most, " + Ranges.text((leastC + mostC) / 2) + " C");
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
