package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.warmvat.cli.option.RunOptions;

/** The time left, in words. */
class LeftTest {

    @Test
    void theTimeLeftIsRounded() {
        assertEquals("about 1 s", RunOptions.left(0.2));
        assertEquals("about 90 s", RunOptions.left(89.1));
        assertEquals("about 2 min", RunOptions.left(100));
        assertEquals("about 90 min", RunOptions.left(5399));
        assertEquals("about 3 h", RunOptions.left(10_000));
    }
}
