package org.warmvat.cli.input;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxisTest {

    @Test
    void rangesCountInDecimalsAndMayFall() {
        assertEquals(List.of(0.0, 0.1, 0.2, 0.3), Axis.parse("a=0:0.3:0.1").values());
        assertEquals(List.of(3.0, 1.0), Axis.parse("a=3:0:-2").values());
        assertEquals(List.of(5.0), Axis.parse("a=5:5:1").values());
        assertEquals(new Axis("a.b", List.of(2.0, 1.0, 1e3)), Axis.parse("a.b = 2, 1,1e3"));
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

    @Test
    void layersGoByMaterialOrPosition() {
        DesignDocument base = DesignDocument.demonstration();
        for (String key : List.of(
                "envelope.wall.pir_foam.thickness_mm",
                "envelope.wall[pir_foam].thickness_mm",
                "envelope.wall[1].thickness_mm")) {
            assertEquals(90, base.number(key));
            assertEquals(120, base.with(key, 120).number("envelope.wall[1].thickness_mm"));
        }
    }
}
