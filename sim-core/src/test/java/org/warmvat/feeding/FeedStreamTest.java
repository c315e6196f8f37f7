package org.warmvat.feeding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.warmvat.design.tank.Contents;

/** Enthalpy of feed, also frozen, by hand (equation 3.1). */
class FeedStreamTest {
    private static final Contents CONTENTS = new Contents(1010, Optional.empty(), 1600, 0.6);
    private final FeedStream scraps = new FeedStream(CONTENTS, 0.2, 2);

    /** 0.8 x 4186 + 0.2 x 1600. */
    @Test
    void specificHeatMixesByMass() {
        assertEquals(3668.8, scraps.specificHeatJPerKgK(), 1e-9);
        assertEquals(4186, new FeedStream(CONTENTS, 0, 2).specificHeatJPerKgK());
    }

    @Test
    void aboveFreezingItIsSensibleOnly() {
        assertEquals(36_688, scraps.enthalpyJPerKg(10), 1e-9);
        assertEquals(0, scraps.enthalpyJPerKg(0));
    }

    /** At -1 °C half the water is ice: -0.5 x 0.8 x 334000 - (0.5 x 2000 + 0.5 x 3668.8). */
    @Test
    void halfFrozenAtHalfTheRange() {
        assertEquals(-133_600 - 2834.4, scraps.enthalpyJPerKg(-1), 1e-9);
    }

    /** From -2 °C down all of it is ice, whose mixture has 0.8 x 2100 + 0.2 x 1600 = 2000 J/kgK. */
    @Test
    void whollyFrozenBelowTheRange() {
        assertEquals(-267_200 - 4000, scraps.enthalpyJPerKg(-2), 1e-9);
        assertEquals(-267_200 - 20_000, scraps.enthalpyJPerKg(-10), 1e-9);
    }

    @Test
    void enthalpyHasNoJumps() {
        for (double edge : new double[] {0, -2}) {
            assertEquals(scraps.enthalpyJPerKg(edge - 1e-9), scraps.enthalpyJPerKg(edge + 1e-9), 1e-3);
        }
    }

    @Test
    void aNarrowRangeFreezesSooner() {
        assertEquals(-267_200 - 1000, new FeedStream(CONTENTS, 0.2, 0.5).enthalpyJPerKg(-0.5), 1e-9);
    }
}
