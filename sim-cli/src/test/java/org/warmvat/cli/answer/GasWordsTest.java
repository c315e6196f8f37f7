package org.warmvat.cli.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The sign of net energy stands in words for low, middle and high gas. */
class GasWordsTest {

    @Test
    void allThreeSignsAreSaid() {
        assertEquals(
                "positive with low, middle and high gas: about 830, 1470 and 2060 kWh",
                GasWords.three(830.4, 1470, 2060));
        assertEquals(
                "negative with low gas, positive with middle and high gas: about -12.0, 120 and 300 kWh",
                GasWords.three(-12.01, 120, 300));
        assertEquals("negative with low and middle gas, nil with high gas", GasWords.signs(-2, -1, 0));
    }

    @Test
    void aVerdictIsFlatOnlyWhereAllThreeAgree() {
        assertEquals("It returns more energy than it takes, with low, middle and high gas.", GasWords.verdict(1, 2, 3));
        assertEquals(
                "It takes more energy than it returns, with low, middle and high gas.", GasWords.verdict(-3, -2, -1));
        assertEquals(
                "Its net energy is negative with low gas, positive with middle and high gas.",
                GasWords.verdict(-1, 2, 3));
    }
}
