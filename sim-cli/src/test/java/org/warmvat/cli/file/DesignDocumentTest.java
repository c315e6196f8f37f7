package org.warmvat.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Refused;

/** Numbers of a design by their paths, and the same design with one exchanged. */
class DesignDocumentTest {

    private final DesignDocument file = DesignDocument.demonstration();
    private final Design full = file.design();
    private final Design small = DesignTexts.yaml(DesignTexts.SMALL).design();

    private static void assertRefused(String message, Executable call) {
        assertEquals(
                List.of(message),
                assertThrows(Refused.class, call).faults().stream()
                        .map(Refused.Fault::toString)
                        .toList());
    }

    @Test
    void theDemonstrationSaysItIsInvented() {
        assertEquals("Thornacre community garden, 900 litre tank", full.title());
        assertTrue(new String(DesignDocument.demonstrationBytes(), java.nio.charset.StandardCharsets.UTF_8)
                .contains("invented"));
        assertEquals(903.2, 1000 * full.tank().liquidVolumeM3(), 0.05);
        assertEquals(List.of(), file.cautions());
    }

    @Test
    void numbersByPath() {
        assertEquals(2.0, full.number("solar.area_m2"));
        assertEquals(110, full.number("envelope.lid[1].thickness_mm"));
        assertEquals(110, full.number("envelope.lid[pir_foam].thickness_mm"));
        assertEquals(4.0, full.number("feed.feedstocks[garden greens].kg_per_day"));
        assertEquals(400, full.number("fittings[legs].bar.section_mm2"));
        assertEquals(1010, full.number("contents.density_kg_m3"), "a default has its path too");
    }

    @Test
    void totalSolidsMayStandInEitherBlock() {
        String inTank = DesignTexts.SMALL.replace("tank: {", "tank: {total_solids: 0.06, ");
        assertNotEquals(DesignTexts.SMALL, inTank);
        Design inContents = DesignTexts.yaml(DesignTexts.SMALL + "contents: {total_solids: 0.06}\n")
                .design();
        assertEquals(inContents, DesignTexts.yaml(inTank).design());
        assertEquals(
                inContents,
                DesignTexts.yaml(inTank + "contents: {total_solids: 0.060}\n").design());
        DesignTexts.assertFaults(
                inTank + "contents: {total_solids: 0.07}\n",
                "d.yaml line 1: tank.total_solids 0.06 beside contents.total_solids 0.07, expected one of them: both mean"
                        + " the same");
        DesignTexts.assertFaults(
                inTank.replace("0.06", "0.6"),
                "d.yaml line 1: contents.total_solids 0.6, expected a number, 0 to 0.5 kg/kg");
    }

    @Test
    void oneNumberExchanged() {
        Design larger = full.with("solar.area_m2", 3);
        assertEquals(3, larger.solar().orElseThrow().collector().areaM2());
        assertEquals(2, full.solar().orElseThrow().collector().areaM2(), "the old one stays");
        assertEquals(full, larger.with("solar.area_m2", 2));
        assertNotEquals(full, larger);
    }

    @Test
    void whatFollowsFromTheNumberFollows() {
        assertEquals(28.5, full.with("control.setpoint_c", 25).highLimitC());
        assertEquals(23, full.with("control.setpoint_c", 25).control().minimumC());
        assertEquals(30, full.with("control.floor_c", 30).control().minimumC(), "in place of the other key");
        assertEquals(
                0.05,
                full.with("envelope.wall[pir_foam].thickness_mm", 50)
                        .envelope()
                        .wall()
                        .get(1)
                        .thicknessM());
    }

    @Test
    void keysThatOnlyDefaultsHave() {
        assertEquals(5, small.with("mixer.torque_nm", 5).number("mixer.torque_nm"));
        assertEquals(4, small.with("mixer.torque_nm", 5).number("mixer.revolutions_per_hour"));
        assertEquals(
                50,
                small.with("envelope.films.wet_w_m2k", 50).envelope().films().wetWPerM2K());

        assertEquals(5, small.with("feed.windows[0].hours", 5).number("feed.windows[0].hours"));
        assertEquals(
                7,
                small.with("envelope.insulation_sub_nodes", 7)
                        .envelope()
                        .wall()
                        .get(1)
                        .subNodes());
    }

    @Test
    void keysWithoutADefault() {
        assertEquals(0.3, small.with("tank.exposure_factor", 0.3).number("tank.exposure_factor"));
        assertEquals(
                40,
                full.with("solar.coil.u_still_w_m2k", 40)
                        .solar()
                        .orElseThrow()
                        .coil()
                        .statedStillWPerM2K()
                        .orElseThrow());
    }

    @Test
    void refusesWhatIsNoNumberOrHasNoPlace() {
        assertRefused("tank.shape is no number, expected the path of one", () -> small.with("tank.shape", 1));
        assertRefused("feed is no number, expected the path of one", () -> small.with("feed", 1));
        assertRefused("solar.area_m2 has no place: this design has no solar", () -> small.with("solar.area_m2", 1));
        assertRefused(
                "envelope.wall[1].thickness_mm has no place: this design has no envelope.wall[1]",
                () -> small.with("envelope.wall[1].thickness_mm", 1));
        assertRefused(
                "envelope.wall[cork].thickness_mm has no place: this design has no envelope.wall[cork]",
                () -> full.with("envelope.wall[cork].thickness_mm", 1));
        assertRefused("solar.area_m2 is no number in this design", () -> small.number("solar.area_m2"));
        assertRefused("tank.shape is no number in this design", () -> small.number("tank.shape"));
    }

    @Test
    void refusesUnknownPaths() {
        assertRefused(
                "contrl.setpoint_c is not a known key, did you mean control?",
                () -> small.with("contrl.setpoint_c", 1));
        assertRefused(
                "solar.coil.are_m2 is not a known key, did you mean solar.coil.area_m2?",
                () -> small.number("solar.coil.are_m2"));
        assertRefused(
                "sky.marmalade is not a known key, known here: beam_from_elevation_deg, cloud_factor, refraction_air_c",
                () -> small.with("sky.marmalade", 1));
        for (String path : List.of("", ".", "a..b", "[1]", "a[", "a[]", "a.", "a]b")) {
            assertRefused(
                    "\"" + path
                            + "\" is no path of a key, expected one such as solar.area_m2 or envelope.wall[1].thickness_mm",
                    () -> small.with(path, 1));
        }
    }

    @Test
    void refusesNumbersThatAreNotAllowed() {
        assertRefused("solar.area_m2 -1, expected a number, 0 to 1000 m2", () -> full.with("solar.area_m2", -1));
        assertRefused(
                "solar.start_difference_k 1, expected above stop_difference_k, 1.5 K",
                () -> full.with("solar.start_difference_k", 1));
        assertRefused(
                "fittings[legs].bar.count 2.5, expected a whole number, 1 to 1000",
                () -> full.with("fittings[legs].bar.count", 2.5));
        assertRefused("solar.area_m2 NaN, expected a finite number", () -> full.with("solar.area_m2", Double.NaN));
        assertRefused(
                "solar.area_m2 -Infinity, expected a finite number",
                () -> full.with("solar.area_m2", Double.NEGATIVE_INFINITY));
    }

    @Test
    void everyListedNumberCanBeReadAndPutBack() {
        Set<String> paths = full.numbers().keySet();
        assertTrue(paths.size() > 100, "numbers: " + paths.size());
        for (String path : paths) {
            assertEquals(full, full.with(path, full.number(path)), path);
        }
    }
}
