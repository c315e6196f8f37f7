package org.warmvat.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RequireTest {

    @Test
    void bothEndsOfTheRangeAreAllowed() {
        assertEquals(-5, Require.within("air temperature in °C", -5, -5, 40));
        assertEquals(40, Require.within("air temperature in °C", 40, -5, 40));
    }

    @Test
    void aValueOutsideIsNamedWithItsRange() {
        assertEquals("wind in m/s -3.2, expected 0 to 60", messageOf(() -> Require.within("wind in m/s", -3.2, 0, 60)));
        assertEquals("wind in m/s 60.5, expected 0 to 60", messageOf(() -> Require.within("wind in m/s", 60.5, 0, 60)));
    }

    @Test
    void notANumberIsRefused() {
        assertEquals(
                "wind in m/s NaN, expected 0 to 60", messageOf(() -> Require.within("wind in m/s", Double.NaN, 0, 60)));
    }

    private static String messageOf(Runnable refused) {
        return assertThrows(IllegalArgumentException.class, refused::run).getMessage();
    }
}
