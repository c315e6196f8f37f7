package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.plot.TankSection.Part;

/** Exact: lengths on paper are to one scale, and nothing leaves the room. */
class TankDrawingTest {

    private static final Rectangle2D ROOM = new Rectangle2D.Double(4, 40, 340, 250);

    private static TankSection section(double widthM, double liquidM, double insulationM, double collectorM2) {
        List<TankSection.Sheet> sheets = List.of(
                new TankSection.Sheet(0.002, TankSection.Kind.METAL),
                new TankSection.Sheet(insulationM, TankSection.Kind.INSULATION),
                new TankSection.Sheet(0.02, TankSection.Kind.OTHER));
        Map<Part, String> words = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            words.put(part, "words of " + part);
        }
        return new TankSection(
                new TankSection.Vessel(widthM, liquidM, 0.2 * liquidM, false, false),
                sheets,
                sheets,
                sheets,
                new TankSection.Collector(collectorM2, 60),
                words);
    }

    @Test
    void everythingIsToOneScaleAndFits() {
        for (double[] size :
                new double[][] {{0.2, 0.1, 0.09, 0.1}, {1, 1.15, 0.09, 2}, {4.5, 3.8, 0.09, 24}, {20, 0.5, 0.3, 4}}) {
            TankPlan plan = TankPlan.within(section(size[0], size[1], size[2], size[3]), ROOM);
            double unit = plan.liquid().getWidth() / size[0];
            assertEquals(size[1] * unit, plan.liquid().getHeight(), 1e-9);
            assertEquals((size[0] + 2 * (0.022 + size[2])) * unit, plan.outer().getWidth(), 1e-9);
            assertEquals(
                    (1.2 * size[1] + 2 * (0.022 + size[2])) * unit, plan.outer().getHeight(), 1e-9);
            double collector = plan.collector().get(0).distance(plan.collector().get(1));
            assertEquals(Math.sqrt(size[3]) * unit, collector, 1e-9);
            assertFalse(plan.collectorIsCutShort());
            for (Rectangle2D part : List.of(plan.outer(), plan.drive(), plan.gasNeck(), plan.heater(), plan.outlet())) {
                assertTrue(ROOM.contains(part), part + " of " + size[0]);
            }
            plan.collector().forEach(end -> assertTrue(ROOM.contains(end), end + " of " + size[0]));
        }
    }

    @Test
    void aCollectorThatWouldDwarfTheTankIsCutShortAndSaysSo() throws Pictures.CannotDraw {
        TankSection vast = section(1, 1, 0.1, 600);
        TankPlan plan = TankPlan.within(vast, ROOM);
        assertTrue(plan.collectorIsCutShort());
        assertTrue(plan.outer().getHeight() > 0.25 * ROOM.getHeight(), "the tank became small");
        String svg = narrow(vast);
        assertTrue(svg.contains("drawn shorter than"), svg.substring(0, 200));
        assertFalse(narrow(section(1, 1, 0.1, 2)).contains("drawn shorter"));
    }

    @Test
    void whatHasNoWordsIsNeitherDrawnNorNumbered() throws Pictures.CannotDraw {
        TankSection whole = section(1, 1, 0.1, 2);
        Map<Part, String> few = new EnumMap<>(Part.class);
        few.put(Part.CONTENTS, "slurry");
        few.put(Part.WALL, "wall");
        TankSection bare =
                new TankSection(whole.vessel(), whole.wall(), whole.lid(), whole.base(), whole.collector(), few);
        String svg = narrow(bare);
        assertTrue(svg.contains(">2</text") && !svg.contains(">3</text"), "numbers");
        assertFalse(svg.contains("rgb(178,107,0)"), "a collector or solar coil is drawn");
        assertTrue(narrow(whole).contains("rgb(178,107,0)"));
        assertEquals(
                "Tank. slurry; wall.", TankDrawing.of("tank", "Tank", "", bare).alternative());
    }

    private static String narrow(TankSection section) throws Pictures.CannotDraw {
        Drawing drawing = TankDrawing.of("tank", "Tank", "", section);
        return new String(Pictures.of(() -> List.of(drawing)).get(0).narrowSvg(), StandardCharsets.UTF_8);
    }
}
