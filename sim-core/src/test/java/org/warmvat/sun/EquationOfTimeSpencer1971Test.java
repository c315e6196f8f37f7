package org.warmvat.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Published: the extremes of the equation of time as almanacs give them, rounded to a tenth of a minute (from memory: -14.2 near 11
 * February, 3.7 near 14 May, -6.5 near 26 July, 16.4 near 3 November); the series is good to half a minute.
 */
class EquationOfTimeSpencer1971Test {
    @Test
    void extremesOfTheYear() {
        assertEquals(-14.2, EquationOfTime.minutes(42), 0.5);
        assertEquals(3.7, EquationOfTime.minutes(134), 0.5);
        assertEquals(-6.5, EquationOfTime.minutes(207), 0.5);
        assertEquals(16.4, EquationOfTime.minutes(307), 0.5);
    }
}
