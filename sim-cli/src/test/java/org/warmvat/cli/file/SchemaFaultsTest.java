package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.warmvat.cli.file.DesignTexts.assertFaults;
import static org.warmvat.cli.file.DesignTexts.smallWith;

import org.junit.jupiter.api.Test;

/** What the schema finds, in full messages. */
class SchemaFaultsTest {

    @Test
    void missingKey() {
        assertFaults(
                smallWith("tank: {inner_diameter_m: 1.0}"),
                "d.yaml line 1: tank.liquid_depth_m is missing, expected a number, 0.1 to 20 m");
    }

    @Test
    void missingBlock() {
        assertFaults(
                "tank: {inner_diameter_m: 1, liquid_depth_m: 1}\nenvelope: {insulation_mm: 100}\n",
                "d.yaml line 1: feed is missing, expected a block",
                "d.yaml line 1: control is missing, expected a block");
    }

    @Test
    void misspeltKey() {
        assertFaults(
                smallWith("control: {setpoint_c: 36, elektronics_w: 3}"),
                "d.yaml line 3: control.elektronics_w is not a known key, did you mean control.electronics_w?");
    }

    /** The one entry that a list must have is another kind of thing. */
    @Test
    void listInPlaceOfTheOnlyFeedstock() {
        assertFaults(
                smallWith("feed: {feedstocks: [[1, 2]]}"),
                "d.yaml line 4: feed.feedstocks[0] is a list, expected a block");
    }

    @Test
    void keyOfAnotherBlock() {
        assertFaults(
                smallWith("control: {setpoint_c: 36, flow_limit_c: 3}"),
                "d.yaml line 3: control.flow_limit_c is not a known key, did you mean backup.flow_limit_c?");
    }

    @Test
    void keyUnlikeAnyOther() {
        assertFaults(
                smallWith("sky: {marmalade: 36}"),
                "d.yaml line 5: sky.marmalade is not a known key, known here: beam_from_elevation_deg, cloud_factor, refraction_air_c");
    }

    @Test
    void numberOutOfRange() {
        assertFaults(
                smallWith("control: {setpoint_c: 96}"),
                "d.yaml line 3: control.setpoint_c 96, expected a number, 5 to 75 C");
        assertFaults(
                smallWith("tank: {inner_diameter_m: 0.05, liquid_depth_m: 1}"),
                "d.yaml line 1: tank.inner_diameter_m 0.05, expected a number, 0.2 to 20 m");
    }

    @Test
    void coilWithoutArea() {
        assertFaults(
                smallWith("solar: {coil: {area_m2: 0}}"),
                "d.yaml line 5: solar.coil.area_m2 0, expected a number, 0.001 to 100 m2");
    }

    @Test
    void textForANumber() {
        assertFaults(
                smallWith("mixer: {idle_w: six, torque_nm: \"60\"}"),
                "d.yaml line 5: mixer.torque_nm \"60\", expected a number, 0 to 100000 N m",
                "d.yaml line 5: mixer.idle_w \"six\", expected a number, 0 to 10000 W");
    }

    @Test
    void partForAWholeNumber() {
        assertFaults(
                smallWith("envelope: {insulation_mm: 100, insulation_sub_nodes: 2.5}"),
                "d.yaml line 2: envelope.insulation_sub_nodes 2.5, expected a whole number, 1 to 50");
    }

    @Test
    void numberForText() {
        assertFaults(smallWith("title: 2025"), "d.yaml line 5: title 2025, expected text that is not blank");
    }

    @Test
    void blankText() {
        assertFaults(smallWith("title: \"  \""), "d.yaml line 5: title \"  \", expected text that is not blank");
    }

    @Test
    void wordNotAmongTheAllowed() {
        assertFaults(
                smallWith("tank: {inner_diameter_m: 1, liquid_depth_m: 1, place: under_rof}"),
                "d.yaml line 1: tank.place \"under_rof\", expected one of open, sheltered, under_roof, shelter, indoors");
    }

    @Test
    void wordForTrueOrFalse() {
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], may_freeze: \"no\"}"),
                "d.yaml line 4: feed.may_freeze \"no\", expected true or false");
    }

    @Test
    void emptyBlock() {
        assertFaults(smallWith("solar:"), "d.yaml line 5: solar is empty, expected a block");
    }

    @Test
    void valueForABlock() {
        assertFaults(smallWith("gas: 35"), "d.yaml line 5: gas 35, expected a block");
        assertFaults(smallWith("gas: [1]"), "d.yaml line 5: gas is a list, expected a block");
    }

    @Test
    void blockForAList() {
        assertFaults(
                smallWith("feed: {feedstocks: {kg_per_day: 10}}"),
                "d.yaml line 4: feed.feedstocks is a block, expected a list with at least one entry");
    }

    @Test
    void emptyList() {
        assertFaults(
                smallWith("feed: {feedstocks: []}"),
                "d.yaml line 4: feed.feedstocks is a list without entries, expected a list with at least one entry");
    }

    @Test
    void wordForAListOfThem() {
        assertFaults(
                smallWith("backup: {allowed_hours: 22:00-06:00}"),
                "d.yaml line 5: backup.allowed_hours \"22:00-06:00\", expected a list with at least one entry, each a stretch such as \"22:00-06:00\"");
    }

    @Test
    void faultInsideAList() {
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}, {kg_per_day: -1}]}"),
                "d.yaml line 4: feed.feedstocks[1].kg_per_day -1, expected a number, 0 to 100000 kg/day");
    }

    @Test
    void temperatureThatIsNoChoice() {
        String expected = "expected one of air, ground, room or a block {fixed_c: ...}";
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], temperature: sun}"),
                "d.yaml line 4: feed.temperature \"sun\", " + expected);
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], temperature: 12}"),
                "d.yaml line 4: feed.temperature 12, " + expected);
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], temperature: {fixed_c: 400}}"),
                "d.yaml line 4: feed.temperature.fixed_c 400, expected a number, -40 to 100 C");
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], temperature: {fixd_c: 4}}"),
                "d.yaml line 4: feed.temperature.fixed_c is missing, expected a number, -40 to 100 C",
                "d.yaml line 4: feed.temperature.fixd_c is not a known key, did you mean feed.temperature.fixed_c?");
    }

    @Test
    void timesThatAreNone() {
        assertFaults(
                smallWith("feed: {feedstocks: [{kg_per_day: 10}], windows: [{start: \"8:00\", hours: 25}]}"),
                "d.yaml line 4: feed.windows[0].start \"8:00\", expected a time such as \"08:00\"",
                "d.yaml line 4: feed.windows[0].hours 25, expected a number, 0.001 to 24 h");
        assertFaults(
                smallWith("backup: {allowed_hours: [\"22:00-25:00\"]}"),
                "d.yaml line 5: backup.allowed_hours[0] \"22:00-25:00\", expected a stretch such as \"22:00-06:00\"");
    }

    @Test
    void materialNumbersThatLackOne() {
        assertFaults(
                smallWith("materials: {cork: {conductivity_w_mk: 0.04, density_kg_m3: 100}}"),
                "d.yaml line 5: materials.cork.specific_heat_j_kgk is missing, expected a number, 100 to 5000 J/kgK");
    }

    @Test
    void longAndStrangeTextIsCutAndMadeVisible() {
        assertFaults(
                smallWith("tank: {inner_diameter_m: 1, liquid_depth_m: \"a\\tb" + "c".repeat(80) + "\"}"),
                "d.yaml line 1: tank.liquid_depth_m \"a?b" + "c".repeat(57) + "...\", expected a number, 0.1 to 20 m");
    }

    @Test
    void faultsAcrossKeysOfSoundBlocksComeInTheSameGo() {
        assertFaults(
                """
                tank: {inner_diameter_m: 1.0, liquid_depth_m: 99}
                envelope: {insulation_mm: 100, insulation: pir_fom}
                control: {setpoint_c: 36, floor_c: 40}
                feed: {feedstocks: [{kg_per_day: 10}], temperature: room}
                solar: {start_difference_k: 1}
                """,
                "d.yaml line 1: tank.liquid_depth_m 99, expected a number, 0.1 to 20 m",
                "d.yaml line 2: envelope.insulation \"pir_fom\" is not a known material, did you mean pir_foam? (others go into the block materials)",
                "d.yaml line 3: control.floor_c 40, expected up to setpoint_c, 36 C",
                "d.yaml line 5: solar.start_difference_k 1, expected above stop_difference_k, 1.5 K");
    }

    @Test
    void twentyFaultsAreToldAndTheRestCounted() {
        StringBuilder text = new StringBuilder(DesignTexts.SMALL).append("fittings:\n");
        text.append("  - {name: hatch, ua_w_k: -1}\n".repeat(23));
        InputRefused refused = assertThrows(InputRefused.class, () -> DesignTexts.yaml(text.toString()));
        assertEquals(21, refused.faults().size());
        assertEquals(
                "d.yaml line 6: fittings[0].ua_w_k -1, expected a number, 0 to 1000 W/K",
                refused.faults().get(0));
        assertEquals(
                "d.yaml line 25: fittings[19].ua_w_k -1, expected a number, 0 to 1000 W/K",
                refused.faults().get(19));
        assertEquals("d.yaml: and 3 more", refused.faults().get(20));
    }
}
