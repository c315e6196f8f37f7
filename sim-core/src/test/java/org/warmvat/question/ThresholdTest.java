package org.warmvat.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ThresholdTest {

    @Test
    void narrowsToAThousandth() {
        try (Parallel parallel = new Parallel(2, Parallel.Progress.SILENT)) {
            double found = Threshold.narrowed(1, 2, value -> value >= 1.2345, parallel);
            assertTrue(found >= 1.2345 && found <= 1.2345 * 1.001);
            // a condition that holds from nothing on ends the search too
            assertTrue(Threshold.narrowed(0, 8, value -> value > 0, parallel) <= 8e-5);
        }
    }

    @Test
    void readsALadder() {
        assertEquals(OptionalInt.of(2), Threshold.firstFromWhichAllHold(List.of(false, false, true, true)));
        assertEquals(OptionalInt.of(3), Threshold.firstFromWhichAllHold(List.of(false, true, false, true)));
        assertEquals(OptionalInt.empty(), Threshold.firstFromWhichAllHold(List.of(true, true, false)));
    }
}
