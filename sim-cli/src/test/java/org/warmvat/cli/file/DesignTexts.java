package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

/** Design texts for tests and the faults they lead to. */
final class DesignTexts {

    /** The smallest design, one key block a line. */
    static final String SMALL = """
            tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2}
            envelope: {insulation_mm: 100}
            control: {setpoint_c: 36}
            feed: {feedstocks: [{kg_per_day: 10}]}
            """;

    private DesignTexts() {}

    /** The smallest design with one of its lines exchanged or, where it starts a new block, added. */
    static String smallWith(String line) {
        String block = line.substring(0, line.indexOf(':') + 1);
        StringBuilder text = new StringBuilder();
        boolean exchanged = false;
        for (String old : SMALL.lines().toList()) {
            boolean here = old.startsWith(block);
            text.append(here ? line : old).append('\n');
            exchanged |= here;
        }
        return exchanged ? text.toString() : text + line + "\n";
    }

    static DesignDocument yaml(String text) {
        return DesignDocument.parse("d.yaml", text);
    }

    static void assertFaults(String text, String... faults) {
        InputRefused refused = assertThrows(InputRefused.class, () -> yaml(text));
        assertEquals(String.join("\n", faults), String.join("\n", refused.faults()));
    }

    static void assertJsonFaults(String text, String... faults) {
        InputRefused refused = assertThrows(InputRefused.class, () -> DesignDocument.parse("d.json", text));
        assertEquals(List.of(faults), refused.faults());
    }
}
