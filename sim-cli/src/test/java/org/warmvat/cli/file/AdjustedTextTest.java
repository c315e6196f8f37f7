package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.design.Design;

/** Exact: the design file that {@code fit} writes is the user's own but for its factors. */
class AdjustedTextTest {

    private static final String REST = """
            # my tank
            tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2} # by the drawing
            envelope: {insulation_mm: 100}
            control: {setpoint_c: 36}
            feed: {feedstocks: [{kg_per_day: 10}]}
            """;

    private static final String FOUND = """

            adjust: # found by fit
              envelope: 1.235
              capacity: 0.9
            """;

    private static Design read(String name, String text) {
        return DesignDocument.parse(name, text).design();
    }

    private static String found(String name, String text) {
        Design fitted = read(name, text).with("adjust.envelope", 1.23456).with("adjust.capacity", 0.9);
        return AdjustedText.of(text, fitted);
    }

    @Test
    void commentsAndOrderStay() {
        assertEquals(REST + FOUND, found("tank.yaml", REST));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "adjust: {envelope: 1.1}\n",
                "adjust:\n  # by an earlier log\n\n  envelope: 1.1\n",
                "\"adjust\":\n  {envelope: 1.1,\n   capacity: 0.7\n}\n"
            })
    void anEarlierBlockMakesWay(String block) {
        assertEquals(REST + FOUND, found("tank.yaml", block + REST));
        String half = "# after it\ncontents: {total_solids: 0.06}\n";
        assertEquals(REST + half + FOUND, found("tank.yaml", REST + block + half));
    }

    @Test
    void otherFactorsOfTheDesignAreKept() {
        assertEquals(
                REST + FOUND.replace("  capacity", "  fittings: 2\n  capacity"),
                found("tank.yaml", "adjust: {fittings: 2}\n" + REST));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\uFEFF"})
    void whatIsWrittenIsReadAsTheDesignThatWasFound(String mark) {
        Design again = read("tank.yaml", found("tank.yaml", mark + REST));
        assertEquals(1.235, again.adjust().envelope(), 0);
        assertEquals(0.9, again.adjust().capacity(), 0);
        assertEquals(read("tank.yaml", REST), again.with("adjust.envelope", 1).with("adjust.capacity", 1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"tank\": {\"inner_diameter_m\": 1.0, \"liquid_depth_m\": 1.2}, \"envelope\": {\"insulation_mm\": 100},"
                        + " \"control\": {\"setpoint_c\": 36}, \"feed\": {\"feedstocks\": [{\"kg_per_day\": 10}]}}",
                "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.2}, envelope: {insulation_mm: 100}, control: {setpoint_c: 36},\n"
                        + " feed: {feedstocks: [{kg_per_day: 10}]}, adjust: {envelope: 3}}"
            })
    void jsonAndBracesBecomeJson(String text) {
        Design again = read("tank.json", found("tank.yaml", text));
        assertEquals(read("tank.yaml", REST).with("adjust.envelope", 1.235).with("adjust.capacity", 0.9), again);
    }
}
