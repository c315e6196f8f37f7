package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.answer.SyntheticRun;
import org.warmvat.result.BoughtEnergy;
import org.warmvat.result.RunResult;

class PicturesTest {

    private static final int SVG_LIMIT_BYTES = 400_000;

    @Test
    void aYearHasSixPicturesInBothForms() throws IOException, CannotDraw {
        List<Picture> pictures = Pictures.of(SyntheticRun.usual());
        assertEquals(
                List.of(
                        "tank_temperature",
                        "heat_by_source",
                        "electricity_by_consumer",
                        "gas_and_net_energy",
                        "winter_week",
                        "spring_week"),
                pictures.stream().map(Picture::name).toList());
        for (Picture picture : pictures) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
            assertEquals(1500, image.getWidth(), picture.name());
            assertTrue(colours(image) > 3, picture.name() + " is blank");
            String svg = new String(picture.svg(), StandardCharsets.UTF_8);
            assertTrue(svg.contains(picture.title()), picture.name());
            assertTrue(svg.length() < SVG_LIMIT_BYTES, picture.name() + " " + svg.length());
            assertFalse(svg.contains("<image"), picture.name() + " holds dots instead of strokes");
            assertTrue(Pictures.NAMES.contains(picture.name()));
        }
    }

    private static long colours(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return Arrays.stream(pixels).distinct().count();
    }

    @Test
    void axesAndLegendsCarryUnitsAndNames() throws CannotDraw {
        List<Picture> pictures = Pictures.of(SyntheticRun.usual());
        assertSays(pictures.get(0), "°C", "set-point", "floor", "slurry, mean of each day", "Jan", "Dec");
        assertSays(pictures.get(1), "kWh a day", "sun", "backup", "mixer's shaft", "need");
        assertSays(pictures.get(2), "kWh a month", "mixer", "auger", "controls", "solar pump");
        assertSays(pictures.get(3), "kWh a month", "gas made", "bought for the backup", "electricity", "net energy");
        assertSays(pictures.get(4), "slurry, °C", "circuits, °C", "heat, W", "12 Jan", "heat taken by the feed");
        assertSays(pictures.get(5), "12 Apr", "heat from the sun", "heat from the backup");
    }

    @Test
    void whatIsNotThereIsNotDrawn() throws CannotDraw {
        RunResult bare = SyntheticRun.of(
                new SyntheticRun.Case("Bare", SyntheticRun.at(2025, 1), 8760, 53, false, Optional.empty()));
        List<Picture> pictures = Pictures.of(bare);
        for (String absent : List.of("sun", "backup", "collector")) {
            for (Picture picture : pictures) {
                assertFalse(text(picture).contains(">" + absent), picture.name() + " speaks of " + absent);
            }
        }
    }

    @Test
    void southernPicturesShowJulyAndOctober() throws CannotDraw {
        RunResult south = SyntheticRun.of(new SyntheticRun.Case(
                "South", SyntheticRun.at(2024, 1), 8784, -38, true, Optional.of(BoughtEnergy.ELECTRICITY)));
        List<Picture> pictures = Pictures.of(south);
        assertSays(pictures.get(4), "12 Jul");
        assertSays(pictures.get(5), "12 Oct");
    }

    @Test
    void aPartYearShowsItsFirstAndMiddleWeek() {
        List<ChosenWeek> weeks = ChosenWeek.of(run(90 * 24));
        assertEquals(
                List.of("first_week", "middle_week"),
                weeks.stream().map(ChosenWeek::name).toList());
        assertEquals(0, weeks.get(0).firstHour());
        assertEquals(0, weeks.get(1).firstHour() % 24);
        assertTrue(weeks.get(1).firstHour() + 168 <= 90 * 24);
    }

    @Test
    void evenOneDayAndThreeYearsCanBeDrawn() throws CannotDraw {
        assertEquals(5, Pictures.of(run(24)).size());
        assertEquals(6, Pictures.of(run(3 * 8760)).size());
    }

    private static RunResult run(int hours) {
        return SyntheticRun.of(new SyntheticRun.Case(
                "Odd", SyntheticRun.at(2023, 3), hours, 53, true, Optional.of(BoughtEnergy.ELECTRICITY)));
    }

    @Test
    void theSameRunGivesTheSamePictures() throws CannotDraw {
        List<Picture> once = Pictures.of(run(240));
        List<Picture> again = Pictures.of(run(240));
        for (int i = 0; i < once.size(); i++) {
            assertArrayEquals(once.get(i).svg(), again.get(i).svg(), once.get(i).name());
            assertArrayEquals(once.get(i).png(), again.get(i).png(), once.get(i).name());
        }
    }

    @Test
    void neighbouringAreasDifferInLightnessOrHatching() {
        List<Swatch> stacked =
                List.of(Palette.BACKUP_AREA, Palette.SUN_AREA, Palette.SHAFT_AREA, Palette.REACTION_AREA);
        for (int i = 1; i < stacked.size(); i++) {
            Swatch below = stacked.get(i - 1);
            Swatch above = stacked.get(i);
            double apart = Math.abs(lightness(below.fill()) - lightness(above.fill()));
            assertTrue(apart > 25 || below.hatch() != above.hatch(), below + " and " + above);
        }
    }

    private static double lightness(Color colour) {
        return 0.30 * colour.getRed() + 0.59 * colour.getGreen() + 0.11 * colour.getBlue();
    }

    @Test
    void hatchingStaysInsideItsArea() {
        Rectangle2D area = new Rectangle2D.Double(10, 20, 31, 17);
        for (Hatch hatch : Hatch.values()) {
            Path2D lines = hatch.lines(area);
            double[] point = new double[6];
            for (PathIterator i = lines.getPathIterator(null); !i.isDone(); i.next()) {
                i.currentSegment(point);
                assertTrue(
                        point[0] >= 10 && point[0] <= 41 && point[1] >= 20 && point[1] <= 37,
                        hatch + " " + point[0] + " " + point[1]);
            }
        }
    }

    @Test
    void oddDaysAtTheEndJoinTheLastWeek() {
        assertEquals(52, Week.split(SyntheticRun.usual().days()).size());
        assertEquals(8, Week.split(SyntheticRun.usual().days()).get(51).days().size());
        assertEquals(2, Week.split(run(12 * 24).days()).size());
        assertEquals(1, Week.split(run(3 * 24).days()).size());
    }

    private static void assertSays(Picture picture, String... words) {
        for (String word : words) {
            assertTrue(text(picture).contains(">" + word), picture.name() + " lacks " + word);
        }
    }

    private static String text(Picture picture) {
        return new String(picture.svg(), StandardCharsets.UTF_8);
    }
}
