package org.warmvat.weather.made;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The daily course of temperature after Erbs, Klein and Beckman (1983), held against the fractions of the daily range in ASHRAE
 * Handbook Fundamentals 2021, chapter 14, table 6 (as publicly quoted): another source for the same thing.
 */
class DiurnalShapeErbs1983Test {
    /** Fractions of the range below the maximum, hours 1 to 24. */
    private static final double[] ASHRAE = {
        .88, .92, .95, .98, 1.00, .98, .91, .74, .55, .38, .23, .13, .05, .00, .00, .06, .14, .24, .39, .50, .59, .68,
        .75, .82
    };

    @Test
    void meanRangeAndHours() {
        double sum = 0;
        int coldest = 1;
        int warmest = 1;
        for (int hour = 1; hour <= 24; hour++) {
            sum += DiurnalShape.at(hour);
            coldest = DiurnalShape.at(hour) < DiurnalShape.at(coldest) ? hour : coldest;
            warmest = DiurnalShape.at(hour) > DiurnalShape.at(warmest) ? hour : warmest;
        }
        assertEquals(0, sum, 1e-12);
        assertEquals(6, coldest);
        assertEquals(15, warmest);
        assertEquals(DiurnalShape.PEAK_TO_PEAK, DiurnalShape.at(warmest) - DiurnalShape.at(coldest), 5e-4);
    }

    /** Two published shapes agree within a sixth of the range at every hour and within a fourteenth on average. */
    @Test
    void agreesWithAshrae() {
        double ashraeMean = 0;
        for (double fraction : ASHRAE) {
            ashraeMean += fraction / 24;
        }
        double sum = 0;
        for (int hour = 1; hour <= 24; hour++) {
            double ours = DiurnalShape.at(hour) / DiurnalShape.PEAK_TO_PEAK;
            double difference = Math.abs(ours - (ashraeMean - ASHRAE[hour - 1]));
            assertTrue(difference < 1 / 6.0, "hour " + hour + " differs by " + difference);
            sum += difference / 24;
        }
        assertTrue(sum < 1 / 14.0, "mean difference " + sum);
    }
}
