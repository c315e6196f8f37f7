package org.warmvat.question.vary;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.warmvat.design.Design;
import org.warmvat.design.keys.Findings;
import org.warmvat.design.keys.Reader;
import org.warmvat.design.keys.Refused;

class AxisTest {

    private static final Design LAYERED = Design.of(
            Reader.tree(
                    "{tank: {inner_diameter_m: 1.0, liquid_depth_m: 1.15}, envelope: {wall: [{material: stainless_steel,"
                            + " thickness_mm: 2}, {material: pir_foam, thickness_mm: 90}], lid: [{material: pir_foam, thickness_mm: 90}],"
                            + " floor: [{material: pir_foam, thickness_mm: 90}]}, control: {setpoint_c: 36}, feed: {feedstocks:"
                            + " [{kg_per_day: 10}], water: {}}, solar: {}, backup: {}, gas: {}}"),
            Findings.strict());

    @Test
    void rangesCountInDecimalsAndMayFall() {
        assertEquals(List.of(0.0, 0.1, 0.2, 0.3), Axis.parse("a=0:0.3:0.1").values());
        assertEquals(List.of(3.0, 1.0), Axis.parse("a=3:0:-2").values());
        assertEquals(List.of(5.0), Axis.parse("a=5:5:1").values());
        assertEquals(new Axis("a.b", List.of(2.0, 1.0, 1e3)), Axis.parse("a.b = 2, 1,1e3"));
    }

    /** A material may have a sign of equality in its name. */
    @Test
    void theLastSignOfEqualityParts() {
        Axis axis = Axis.parse("materials.foam=dry.conductivity_w_mk=0.02,0.03");
        assertEquals("materials.foam=dry.conductivity_w_mk", axis.key());
        assertEquals(List.of(0.02, 0.03), axis.values());
    }

    @Test
    void whatIsNeitherIsRefused() {
        assertRefused(
                "a",
                "\"a\", expected a key with its values, such as solar.area_m2=1,2,3 or control.setpoint_c=20:40:5");
        assertRefused("a=1:5:-1", "a=1:5:-1, expected a step that leads from 1 to 5");
        assertRefused("a=1:5:0", "a=1:5:0, expected a step that leads from 1 to 5");
        assertRefused("a=1,,2", "a: \"\" is no number");
        assertRefused("a=0:1e6:1", "a=0:1e6:1, expected at most 100000 values");
    }

    private static void assertRefused(String text, String message) {
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> Axis.parse(text))
                        .getMessage());
    }

    @Test
    void theLastAxisRunsFastest() {
        Grid grid = new Grid(List.of(Axis.parse("a=1,2"), Axis.parse("b=3,4,5")));
        assertEquals(6, grid.size());
        assertArrayEquals(new double[] {1, 4}, grid.values(1));
        assertArrayEquals(new double[] {2, 3}, grid.values(3));
    }

    private static List<String> refused(String... axes) {
        Grid grid = new Grid(Stream.of(axes).map(Axis::parse).toList());
        return assertThrows(Refused.class, () -> grid.check(LAYERED)).faults().stream()
                .map(Refused.Fault::toString)
                .toList();
    }

    @Test
    void everyValueIsCheckedBeforeTheRunsAndAllFaultsAreToldAtOnce() {
        List<String> lines = refused("solar.area_m2=1,-2,3,-4,5", "control.setpoint_c=36,400,38");
        assertEquals(3, lines.size(), lines.toString());
        assertTrue(lines.get(0).contains("solar.area_m2 -2, expected a number, 0 to 1000 m2"), lines.get(0));
        assertTrue(lines.get(1).contains("solar.area_m2 -4, expected a number, 0 to 1000 m2"), lines.get(1));
        assertTrue(lines.get(2).contains("control.setpoint_c 400, expected a number, "), lines.get(2));
        assertEquals(20, refused("solar.area_m2=-1:-100:-1").size());
        assertEquals(1, refused("solar.aera_m2=1:100:1").size());
    }

    @Test
    void oneNumberUnderTwoNamesIsRefused() {
        assertEquals(
                List.of("two axes lead to the same number, expected one for each"),
                refused("envelope.wall.pir_foam.thickness_mm=90,120", "envelope.wall[1].thickness_mm=60,90"));
    }

    @Test
    void layersGoByMaterialOrPosition() {
        for (String key : List.of(
                "envelope.wall.pir_foam.thickness_mm",
                "envelope.wall[pir_foam].thickness_mm",
                "envelope.wall[1].thickness_mm")) {
            assertEquals(90, LAYERED.number(key));
            assertEquals(120, LAYERED.with(key, 120).number("envelope.wall[1].thickness_mm"));
        }
    }
}
