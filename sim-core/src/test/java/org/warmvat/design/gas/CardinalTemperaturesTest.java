package org.warmvat.design.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The rate between the cardinal temperatures: exact properties of the function. */
class CardinalTemperaturesTest {

    private static final CardinalTemperatures USUAL = new CardinalTemperatures(8, 38, 46);

    @Test
    void isOneAtTheBestAndNothingOutside() {
        assertEquals(1, USUAL.relativeRate(38), 1e-15);
        assertEquals(0, USUAL.relativeRate(8));
        assertEquals(0, USUAL.relativeRate(46));
        assertEquals(0, USUAL.relativeRate(-5));
        assertEquals(0, USUAL.relativeRate(60));
    }

    /** By hand at 35 C: (35-46)(35-8)^2 / (30 [30 x (-3) - (-8)(46 - 70)]) = -8019 / (30 x (-282)) = 0.947872. */
    @Test
    void handCalculation() {
        assertEquals(8019.0 / 8460.0, USUAL.relativeRate(35), 1e-15);
    }

    @Test
    void riseUpToTheBestAndFallBehindIt() {
        for (double t = 8.1; t < 46; t += 0.1) {
            double before = USUAL.relativeRate(t - 0.1);
            double now = USUAL.relativeRate(t);
            assertTrue(now >= 0 && now <= 1, "f(" + t + ") = " + now);
            assertTrue(t <= 38 ? now > before : t - 0.1 < 38 || now < before, "slope at " + t);
        }
    }

    @Test
    void factorIsOneAtTheReference() {
        Gas gas = new Gas(35, 0.58, USUAL, Optional.empty(), 0, 1440, Optional.empty(), List.of(), Optional.empty());
        assertEquals(1, gas.rateFactor(35), 1e-15);
        assertEquals(1 / USUAL.relativeRate(35), gas.rateFactor(38), 1e-15);
    }

    @Test
    void refusesABestInTheLowerHalf() {
        assertEquals(
                "best 27, expected above the mean of least and most, 27 C, and below most, 46 C",
                assertThrows(IllegalArgumentException.class, () -> new CardinalTemperatures(8, 27, 46))
                        .getMessage());
        assertEquals(
                "best 46, expected above the mean of least and most, 27 C, and below most, 46 C",
                assertThrows(IllegalArgumentException.class, () -> new CardinalTemperatures(8, 46, 46))
                        .getMessage());
        assertEquals(
                "least 8, expected below most, 5 C",
                assertThrows(IllegalArgumentException.class, () -> new CardinalTemperatures(8, 4, 5))
                        .getMessage());
    }
}
