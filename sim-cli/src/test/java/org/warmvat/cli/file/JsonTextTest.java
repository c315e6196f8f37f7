package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.warmvat.cli.file.DesignTexts.assertJsonFaults;

import org.junit.jupiter.api.Test;

/** JSON designs: the same keys, the same messages. */
class JsonTextTest {

    private static final String SMALL = """
            {
            \t"tank": {"inner_diameter_m": 1.0, "liquid_depth_m": 1.2},
            \t"envelope": {"insulation_mm": 100},
            \t"control": {"setpoint_c": 36},
            \t"feed": {"feedstocks": [{"kg_per_day": 10}]}
            }
            """;

    @Test
    void leadsToTheSameDesignAsYaml() {
        DesignDocument json = DesignDocument.parse("d.json", SMALL);
        assertEquals(DesignTexts.yaml(DesignTexts.SMALL).design(), json.design());
        assertEquals(DesignTexts.yaml(DesignTexts.SMALL).assumed(), json.assumed());
    }

    @Test
    void isKnownByItsLooksToo() {
        assertEquals(
                36, DesignDocument.parse("design", SMALL).design().control().setpointC());
    }

    @Test
    void faultsHaveLines() {
        assertJsonFaults(
                SMALL.replace("36", "99").replace("10}", "-1}"),
                "d.json line 4: control.setpoint_c 99, expected a number, 5 to 75 C",
                "d.json line 5: feed.feedstocks[0].kg_per_day -1, expected a number, 0 to 100000 kg/day");
    }

    @Test
    void repeatedKey() {
        assertJsonFaults(
                SMALL.replace("\"setpoint_c\": 36", "\"setpoint_c\": 36,\n \"setpoint_c\": 37"),
                "d.json line 5: control.setpoint_c stands here again, first in line 4, expected once");
    }

    @Test
    void brokenText() {
        assertJsonFaults(
                "{\"tank\": 1,\n}",
                "d.json line 2: this is not JSON: Unexpected character ('}' (code 125)): was expecting double-quote to start field name");
        assertJsonFaults(
                "{\"tank\": 035}",
                "d.json line 1: this is not JSON: Invalid numeric value: Leading zeroes not allowed");
    }

    @Test
    void moreThanOneValue() {
        assertJsonFaults(SMALL + "{}", "d.json line 7: more after the closing bracket, expected the end");
    }

    @Test
    void somethingElseThanBlocks() {
        assertJsonFaults(
                "[1]",
                "d.json line 1: a list or a single value, expected blocks of keys such as tank, envelope, feed and control");
    }

    @Test
    void tooLargeAndTooDeep() {
        assertJsonFaults(
                SMALL.replace("36", "1e999"),
                "d.json line 4: control.setpoint_c \"1e999\", expected a number that is not so large");
        assertJsonFaults(
                "{\"sky\": " + "[".repeat(900) + "]".repeat(900) + "}",
                "d.json line 1: blocks more than 20 deep, expected fewer");
    }
}
