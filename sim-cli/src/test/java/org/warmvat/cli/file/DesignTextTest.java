package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.warmvat.design.Design;

/** Single values of a design's text are exchanged, and every other letter stays, comments too. */
class DesignTextTest {

    private static final String TEXT = """
            # a tank of mine
            title: "Tank, ä 🙂"   # its name
            tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}
            fittings:
              # what leaks
              - {name: gas neck, ua_w_k: 0.25}  # measured
              - name: hatch   # guessed
                ua_w_k: 0.2

            control:
              setpoint_c: 36   # warm
              band_k: 1.0
            # the end
            """;

    private static String with(String path, String value) {
        return with(TEXT, path, value);
    }

    private static String with(String text, String path, String value) {
        return DesignText.of("mine.yaml", text).with(path, value).text();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "control.setpoint_c | 37.5 | setpoint_c: 36   # warm | setpoint_c: 37.5   # warm",
                "tank.liquid_depth_m | 1.2 | depth_m: 1.15} | depth_m: 1.2}",
                "tank.stands_on | \"ground\" | depth_m: 1.15} | depth_m: 1.15, stands_on: ground}",
                "title | \"yes\" | \"Tank, ä 🙂\"   # | \"yes\"   #",
                "fittings[0].ua_w_k | 3e-1 | ua_w_k: 0.25} | ua_w_k: 0.3}",
                "fittings[1].name | \"lid\" | name: hatch   # guessed | name: lid   # guessed"
            })
    void aValueIsExchangedOrPutIn(String path, String value, String before, String after) {
        assertTrue(TEXT.contains(before.strip()), before);
        assertEquals(TEXT.replace(before.strip(), after.strip()), with(path, value));
    }

    @Test
    void keysAndEntriesAreAddedBehindTheLast() {
        assertEquals(TEXT.replace("band_k: 1.0\n", "band_k: 1.0\n  grace_days: 3\n"), with("control.grace_days", "3"));
        assertEquals(
                TEXT.replace("    ua_w_k: 0.2\n", "    ua_w_k: 0.2\n  - {name: legs, ua_w_k: 1}\n"),
                with("fittings[2]", "{\"name\": \"legs\", \"ua_w_k\": 1}"));
        assertEquals(
                TEXT.replace("band_k: 1.0\n", "band_k: 1.0\nsolar: {coil: {area_m2: 2}}\n"),
                with("solar.coil.area_m2", "2"));
    }

    @Test
    void keysAndEntriesAreTakenOutWithTheirLines() {
        assertEquals(TEXT.replace("  band_k: 1.0\n", ""), with("control.band_k", ""));
        assertEquals(TEXT.replace("inner_diameter_m: 1.0, ", ""), with("tank.inner_diameter_m", ""));
        assertEquals(TEXT.replace(", liquid_depth_m: 1.15", ""), with("tank.liquid_depth_m", ""));
        assertEquals(TEXT.replace("  - {name: gas neck, ua_w_k: 0.25}  # measured\n", ""), with("fittings[0]", ""));
        assertEquals(TEXT.replace("  - name: hatch   # guessed\n    ua_w_k: 0.2\n", ""), with("fittings[1]", ""));
        assertEquals(TEXT.replace("name: gas neck, ", ""), with("fittings[0].name", ""));
    }

    @Test
    void aBlockGivesWayToAWordAndBack() {
        String text = "feed:\n  temperature:\n    fixed_c: 12   # tap\n  may_freeze: true\n";
        String word = with(text, "feed.temperature", "\"air\"");
        assertEquals("feed:\n  temperature:\n    air   # tap\n  may_freeze: true\n", word);
        assertEquals(
                "feed:\n  temperature:\n    {fixed_c: 12}   # tap\n  may_freeze: true\n",
                with(word, "feed.temperature", "{\"fixed_c\": 12}"));
    }

    @Test
    void jsonStaysJson() {
        String text = "{\"control\": {\"setpoint_c\": 36}}";
        assertEquals(
                "{\n  \"control\" : {\n    \"setpoint_c\" : 37,\n    \"band_k\" : 2\n  }\n}\n",
                DesignText.of("mine.json", text)
                        .with("control.setpoint_c", "37")
                        .with("control.band_k", "2")
                        .text());
    }

    @Test
    void whatWouldLoseSomethingIsRefused() {
        String text = "project:\n  note: |\n    two\n    lines\n";
        assertEquals(text + "  by: me\n", with(text, "project.by", "\"me\""));
        for (String path : List.of("fittings[3]", "fittings[hatch].ua_w_k", "fittings.name", "control[0]")) {
            InputRefused refused = assertThrows(InputRefused.class, () -> with(path, "1"));
            assertEquals(List.of("mine.yaml: " + path + " is no place of this design"), refused.faults());
        }
        String open = "control: {setpoint_c: 36, # warm\n  band_k: 1 # wide\n  }\n";
        assertEquals(
                List.of(
                        "mine.yaml: control.band_k cannot be changed here without losing something of the text, expected the change in"
                                + " the text itself"),
                assertThrows(InputRefused.class, () -> with(open, "control.band_k", ""))
                        .faults());
        assertThrows(InputRefused.class, () -> with(TEXT, "no path[", "1"));
        assertThrows(InputRefused.class, () -> with(TEXT, "title", "{broken"));
    }

    private static Stream<String> designs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("../docs/examples"))) {
            List<Path> examples = files.filter(file -> file.toString().endsWith(".yaml")
                            && !file.toString().contains("layout"))
                    .sorted()
                    .toList();
            Stream.Builder<String> all = Stream.builder();
            all.add(new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8));
            for (Path example : examples) {
                String text = Files.readString(example);
                if (text.matches("(?s)(.*\\n)?tank:.*")) {
                    all.add(text);
                }
            }
            return all.build();
        }
    }

    /** Whatever number is exchanged, written out or by default: the design then has it, and no comment is gone. */
    @ParameterizedTest
    @org.junit.jupiter.params.provider.MethodSource("designs")
    void everyNumberOfADesignCanBeExchanged(String text) {
        Design design = DesignDocument.parse("design.yaml", text).design();
        long comments = text.chars().filter(letter -> letter == '#').count();
        int exchanged = 0;
        for (String path : design.numbers().keySet()) {
            if (path.startsWith("plausible.")) { // lists of several entries that are not written out
                continue;
            }
            String edited = with(text, path, Double.toString(design.number(path)));
            assertEquals(
                    comments, edited.chars().filter(letter -> letter == '#').count(), path);
            exchanged++;
        }
        assertTrue(exchanged > 30, "only " + exchanged);
    }
}
