package org.warmvat.spelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Edit distance and the nearest word. */
class NearestTest {

    @Test
    void distances() {
        assertEquals(0, Nearest.distance("lid", "lid"));
        assertEquals(3, Nearest.distance("", "lid"));
        assertEquals(1, Nearest.distance("lid", "li"));
        assertEquals(1, Nearest.distance("lid", "lip"));
        assertEquals(3, Nearest.distance("kitten", "sitting"), "the textbook pair");
        assertEquals(2, Nearest.distance("ab", "ba"));
    }

    @Test
    void nearestWordIfNearEnough() {
        List<String> known = List.of("wall", "lid", "floor", "outer_absorptance");
        assertEquals(Optional.of("wall"), Nearest.of("wal", known));
        assertEquals(Optional.of("wall"), Nearest.of("WALL", known), "capitals do not count");
        assertEquals(Optional.of("outer_absorptance"), Nearest.of("outer_absorbtion", known));
        assertEquals(Optional.empty(), Nearest.of("marmalade", known));
    }
}
