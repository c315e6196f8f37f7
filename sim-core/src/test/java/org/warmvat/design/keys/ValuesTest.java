package org.warmvat.design.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;

/** The values of a design as its file would write them. */
class ValuesTest {

    private static final Design USUAL = Design.usual();
    private static final Map<String, String> VALUES = Values.all(USUAL);

    @Test
    void everyNumberStandsThereAsItIsWritten() {
        USUAL.numbers().forEach((path, number) -> {
            String value = VALUES.getOrDefault(path, VALUES.get(named(path)));
            assertEquals(Shown.number(number), value, path);
        });
    }

    /** Entries of lists stand under their names, and so here. */
    private static String named(String path) {
        return path.replace(
                "feedstocks[0]", "feedstocks[" + USUAL.feed().names().get(0) + "]");
    }

    @Test
    void wordsAndTextsStandThere() {
        assertEquals("untitled tank", VALUES.get("title"));
        assertEquals("electric", VALUES.get("backup.source"));
        assertEquals("circuit", VALUES.get("backup.through"));
        assertEquals("sheltered", VALUES.get("tank.place"));
        assertEquals("00:00-24:00", VALUES.get("backup.allowed_hours"));
        assertEquals("0.0005", VALUES.get("backup.coil.fouling_m2k_w"));
        assertEquals("08:00", VALUES.get("feed.windows[0].start"));
        assertEquals("legs", VALUES.get("tank.stands_on"));
    }

    @Test
    void whatIsAbsentHasNone() {
        Map<String, String> without = Values.all(USUAL.without(org.warmvat.design.gas.Gas.class));
        assertTrue(VALUES.keySet().stream().anyMatch(key -> key.startsWith("gas.")));
        assertFalse(without.keySet().stream().anyMatch(key -> key.startsWith("gas.")));
    }
}
