package org.warmvat.weather.made;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

/** The order of clear and warm days: persistence, what they have in common by season and hemisphere, repetition. */
class TypicalDaysTest {
    private static final int YEARS = 20;

    /** Over 20 years; a month's own mean is not taken out, so nothing is lost to its shortness. The standard error is about 0.02. */
    @Test
    void persistence() {
        double clear = 0;
        double warm = 0;
        for (int seed = 0; seed < YEARS; seed++) {
            TypicalDays days = TypicalDays.draw(seed, 50);
            clear += successive(days.clearness()) / YEARS;
            warm += successive(days.warmth()) / YEARS;
        }
        assertEquals(0.29, clear, 0.06);
        assertEquals(0.55, warm, 0.06);
    }

    @Test
    void winterColdIsClearOnBothHemispheres() {
        assertTrue(inCommon(50, 0) < -0.1, "northern January");
        assertTrue(inCommon(50, 181) > 0.1, "northern July");
        assertTrue(inCommon(-42, 0) > 0.1, "southern January");
        assertTrue(inCommon(-42, 181) < -0.1, "southern July");
        assertEquals(0, inCommon(0, 0), 0.1, "no season at the equator");
    }

    /** What is picked as typical differs less between seeds than chance would: less than half the 0.18 of 31 independent days. */
    @Test
    void seedsDifferLittleInWhatColdAndClearHaveInCommon() {
        double[] januaries = new double[YEARS];
        Arrays.setAll(januaries, seed -> common(TypicalDays.draw(seed, 50), 0));
        double mean = Arrays.stream(januaries).average().orElseThrow();
        double square = Arrays.stream(januaries)
                .map(january -> (january - mean) * (january - mean))
                .average()
                .orElseThrow();
        assertTrue(Math.sqrt(square) < 0.09, "deviation " + Math.sqrt(square));
    }

    @Test
    void aSeedRepeatsAndAnotherDiffers() {
        assertArrayEquals(
                TypicalDays.draw(7, 50).warmth(), TypicalDays.draw(7, 50).warmth());
        assertFalse(Arrays.equals(
                TypicalDays.draw(7, 50).warmth(), TypicalDays.draw(8, 50).warmth()));
    }

    private static double inCommon(double latitudeDeg, int firstDay) {
        double sum = 0;
        for (int seed = 0; seed < YEARS; seed++) {
            sum += common(TypicalDays.draw(seed, latitudeDeg), firstDay) / YEARS;
        }
        return sum;
    }

    private static double common(TypicalDays days, int firstDay) {
        return new PearsonsCorrelation()
                .correlation(
                        Arrays.copyOfRange(days.clearness(), firstDay, firstDay + 31),
                        Arrays.copyOfRange(days.warmth(), firstDay, firstDay + 31));
    }

    private static double successive(double[] days) {
        return new PearsonsCorrelation()
                .correlation(Arrays.copyOfRange(days, 1, days.length), Arrays.copyOf(days, days.length - 1));
    }
}
