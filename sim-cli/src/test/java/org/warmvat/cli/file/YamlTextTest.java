package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.warmvat.cli.file.DesignTexts.assertFaults;
import static org.warmvat.cli.file.DesignTexts.smallWith;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The traps of YAML, each refused by name, and the plain numbers that are none. */
class YamlTextTest {

    private static void assertTrap(String raw, String fault) {
        assertFaults(smallWith("control: {setpoint_c: " + raw + "}"), "d.yaml line 3: control.setpoint_c " + fault);
    }

    @ParameterizedTest
    @ValueSource(strings = {"035", "0o43", "-007", "00", "036.5"})
    void leadingZero(String raw) {
        assertTrap(
                raw,
                raw + ": some readers take a leading zero as octal, expected a number without it, or quotes for text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0x24", "0X1F", "0b101"})
    void otherBases(String raw) {
        assertTrap(raw, raw + ", expected a decimal number, or quotes for text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"3_6", "1_000.5"})
    void underscores(String raw) {
        assertTrap(raw, raw + ", expected a number without underscores, or quotes for text");
    }

    /** Some readers count 12:30 in sixties; here it is the clock time it looks like, and no number. */
    @ParameterizedTest
    @ValueSource(strings = {"12:30", "1:30:00", "08:00"})
    void clockTimesAreText(String raw) {
        assertEquals(Optional.empty(), PlainScalar.trap(raw));
        assertEquals(raw, PlainScalar.value(raw).textValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {".inf", "-.INF", ".nan", "NaN", "Infinity", "-inf"})
    void notFinite(String raw) {
        assertTrap(raw, raw + ", expected a finite number, or quotes for text");
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "No", "y", "N", "True", "FALSE"})
    void wordsForTrueAndFalse(String raw) {
        assertTrap(
                raw,
                raw
                        + ": readers differ on whether this is true, false or text, expected true, false, or quotes for text");
    }

    @Test
    void decimalComma() {
        assertFaults(
                smallWith("control:\n  setpoint_c: 36,5"),
                "d.yaml line 4: control.setpoint_c 36,5, expected a decimal point: 36.5");
    }

    @Test
    void tooLarge() {
        assertTrap("1e400", "1e400, expected a number that is not so large");
    }

    @Test
    void trapsAreFaultsOfTextToo() {
        assertFaults(
                smallWith("title: 007"),
                "d.yaml line 5: title 007: some readers take a leading zero as octal, expected a number without it, or quotes for text");
        assertEquals(
                "007", DesignTexts.yaml(smallWith("title: \"007\"")).design().title());
    }

    @ParameterizedTest
    @CsvSource({"36, 36", "36.0, 36", "3.6e1, 36", "+36, 36", "36., 36", "0.36E+2, 36"})
    void plainNumbers(String raw, double value) {
        assertEquals(
                value,
                DesignTexts.yaml(smallWith("control: {setpoint_c: " + raw + "}"))
                        .design()
                        .control()
                        .setpointC());
    }

    @ParameterizedTest
    @ValueSource(strings = {"e5", "-", ".", "1e", "--1", "1.2.3", "5 W"})
    void wordsThatOnlyLookLikeNumbers(String raw) {
        assertTrap(raw, "\"" + raw + "\", expected a number, 5 to 75 C");
    }

    @Test
    void repeatedKey() {
        assertFaults(
                DesignTexts.SMALL + "control: {setpoint_c: 40}\n",
                "d.yaml line 5: control stands here again, first in line 3, expected once");
        assertFaults(
                smallWith("control: {setpoint_c: 40, band_k: 1, setpoint_c: 40}"),
                "d.yaml line 3: control.setpoint_c stands here again, first in line 3, expected once");
    }

    @Test
    void anchorsAliasesAndMergeKeys() {
        assertFaults(
                smallWith("solar:\n  coil: &c {area_m2: 1}\nbackup:\n  coil: *c"),
                "d.yaml line 6: solar.coil &c is an anchor, expected none: write the value out in each place",
                "d.yaml line 8: backup.coil *c is an alias, expected the value itself written out");
        assertFaults(
                smallWith("sky: {<<: {cloud_factor: 1}}"),
                "d.yaml line 5: sky.<< is a merge key, expected the keys themselves written out");
    }

    @Test
    void tags() {
        assertFaults(
                smallWith("control: {setpoint_c: !!float 36}"),
                "d.yaml line 3: control.setpoint_c carries the tag tag:yaml.org,2002:float, expected none");
    }

    @Test
    void severalDocuments() {
        assertFaults(
                DesignTexts.SMALL + "---\n" + DesignTexts.SMALL,
                "d.yaml line 5: a second document starts here (---), expected one document");
        assertEquals(
                36,
                DesignTexts.yaml("---\n" + DesignTexts.SMALL + "...\n")
                        .design()
                        .control()
                        .setpointC());
    }

    @Test
    void keysThatAreNoNames() {
        assertFaults(
                DesignTexts.SMALL + "? [a, b]\n: 3\n",
                "d.yaml line 5: a list, block or alias in the place of a key, expected a name");
    }

    @Test
    void tabs() {
        assertFaults("tank:\n\tshape: box\n", "d.yaml line 2: a tab before the key, expected spaces");
    }

    @Test
    void brokenText() {
        assertFaults(
                "tank: {inner_diameter_m: 1\nenvelope: 3\n",
                "d.yaml line 2: this is not YAML: expected ',' or '}', but got : (while parsing a flow mapping)");
        assertFaults(
                "tank: \"never closed\n",
                "d.yaml line 2: this is not YAML: found unexpected end of stream (while scanning a quoted scalar)");
    }

    @Test
    void controlCharacters() {
        assertFaults("title: a\ntank: \u0007\n", "d.yaml line 2: control character 0x07, expected text");
    }

    @Test
    void somethingElseThanBlocks() {
        String expected = ", expected blocks of keys such as tank, envelope, feed and control";
        assertFaults("- 1\n- 2\n", "d.yaml line 1: a list" + expected);
        assertFaults("just words\n", "d.yaml line 1: a single value" + expected);
        assertFaults("# only a remark\n", "d.yaml line 2: nothing" + expected);
    }

    @Test
    void tooDeep() {
        assertFaults(
                smallWith("sky: " + "[".repeat(5000) + "]".repeat(5000)),
                "d.yaml line 5: blocks more than 20 deep, expected fewer");
        assertFaults(
                smallWith("sky: " + "{a: ".repeat(30) + "1" + "}".repeat(30)),
                "d.yaml line 5: blocks more than 20 deep, expected fewer");
    }

    @Test
    void linesAreCountedThroughCommentsAndBlocks() {
        String text = "# one\n\n"
                + DesignTexts.SMALL.replace("control: {setpoint_c: 36}", "control:\n\n  # c\n  setpoint_c: 99");
        assertFaults(text, "d.yaml line 8: control.setpoint_c 99, expected a number, 5 to 75 C");
        assertTrue(text.lines().toList().get(7).contains("99"));
    }
}
