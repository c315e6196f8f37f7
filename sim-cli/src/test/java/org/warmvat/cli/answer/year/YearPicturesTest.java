package org.warmvat.cli.answer.year;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.plot.Drawing;
import org.warmvat.cli.plot.Picture;
import org.warmvat.cli.plot.Pictures;
import org.warmvat.question.year.YearResult;

class YearPicturesTest {

    private static final int SVG_LIMIT_BYTES = 400_000;

    @Test
    void aYearHasEightPicturesInAllForms() throws IOException, Pictures.CannotDraw {
        List<Picture> pictures = Pictures.of(() -> YearPictures.of(SyntheticRun.usual()));
        assertEquals(
                List.of(
                        "tank_temperature",
                        "heat_by_source",
                        "gas_and_net_energy",
                        "electricity_by_consumer",
                        "worst_week",
                        "winter_week",
                        "spring_week",
                        "summer_week"),
                pictures.stream().map(Picture::name).toList());
        for (Picture picture : pictures) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.png()));
            assertEquals(1500, image.getWidth(), picture.name());
            assertTrue(new String(picture.narrowSvg(), StandardCharsets.UTF_8).contains("width=\"350\""));
            assertTrue(colours(image) > 3, picture.name() + " is blank");
            String svg = new String(picture.svg(), StandardCharsets.UTF_8);
            assertTrue(svg.contains(picture.drawing().title()), picture.name());
            assertTrue(svg.length() < SVG_LIMIT_BYTES, picture.name() + " " + svg.length());
            assertFalse(svg.contains("<image"), picture.name() + " holds dots instead of strokes");
            assertTrue(YearPictures.NAMES.contains(picture.name()));
        }
    }

    private static long colours(BufferedImage image) {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return Arrays.stream(pixels).distinct().count();
    }

    @Test
    void axesAndLegendsCarryUnitsAndNames() throws Pictures.CannotDraw {
        List<Picture> pictures = Pictures.of(() -> YearPictures.of(SyntheticRun.usual()));
        assertSays(pictures.get(0), "°C", "set-point", "minimum", "slurry, mean of each day", "Jan", "Dec");
        assertSays(pictures.get(1), "kWh a day", "sun", "backup", "mixer's shaft", "need");
        assertSays(pictures.get(3), "kWh a month", "mixer", "auger", "controls", "solar pump");
        assertSays(pictures.get(2), "kWh a month", "gas made", "energy for the backup", "electricity", "net energy");
        assertSays(pictures.get(5), "slurry, °C", "circuits, °C", "heat, W", "12 Jan", "heat taken by the feed");
        assertSays(pictures.get(6), "12 Apr", "heat from the sun", "heat from the backup");
    }

    @Test
    void whatIsNotThereIsNotDrawn() throws Pictures.CannotDraw {
        YearResult bare = SyntheticRun.of(
                new SyntheticRun.Case("Bare", SyntheticRun.at(2025, 1), 8760, 53, false, Optional.empty()));
        List<Picture> pictures = Pictures.of(() -> YearPictures.of(bare));
        for (String absent : List.of("sun", "backup", "collector")) {
            for (Picture picture : pictures) {
                assertFalse(text(picture).contains(">" + absent), picture.name() + " speaks of " + absent);
            }
        }
    }

    @Test
    void southernPicturesShowJulyAndOctober() throws Pictures.CannotDraw {
        YearResult south = SyntheticRun.of(
                new SyntheticRun.Case("South", SyntheticRun.at(2024, 1), 8784, -38, true, Optional.of("electric")));
        List<Picture> pictures = Pictures.of(() -> YearPictures.of(south));
        assertSays(pictures.get(5), "12 Jul");
        assertSays(pictures.get(6), "12 Oct");
    }

    @Test
    void aPartYearShowsItsFirstAndMiddleWeek() {
        List<Drawing> drawings = YearPictures.of(run(90 * 24));
        assertEquals(
                List.of("worst_week", "first_week", "middle_week"),
                drawings.stream().skip(4).map(Drawing::name).toList());
        String middle = drawings.get(6).alternative();
        assertTrue(middle.startsWith("A week in the middle, hour by hour, 11 April 00:00 to 18 April 00:00. "), middle);
    }

    @Test
    void evenOneDayAndThreeYearsCanBeDrawn() throws Pictures.CannotDraw {
        assertEquals(5, Pictures.of(() -> YearPictures.of(run(24))).size());
        assertEquals(8, Pictures.of(() -> YearPictures.of(run(3 * 8760))).size());
    }

    private static YearResult run(int hours) {
        return SyntheticRun.of(
                new SyntheticRun.Case("Odd", SyntheticRun.at(2023, 3), hours, 53, true, Optional.of("electric")));
    }

    @Test
    void theSameRunGivesTheSamePictures() throws Pictures.CannotDraw {
        List<Picture> once = Pictures.of(() -> YearPictures.of(run(240)));
        List<Picture> again = Pictures.of(() -> YearPictures.of(run(240)));
        for (int i = 0; i < once.size(); i++) {
            assertArrayEquals(once.get(i).svg(), again.get(i).svg(), once.get(i).name());
            assertArrayEquals(once.get(i).png(), again.get(i).png(), once.get(i).name());
        }
    }

    @Test
    void oddDaysAtTheEndJoinTheLastWeek() {
        assertEquals(52, YearPictures.weeksOf(SyntheticRun.usual().days()).size());
        assertEquals(
                8, YearPictures.weeksOf(SyntheticRun.usual().days()).get(51).size());
        assertEquals(2, YearPictures.weeksOf(run(12 * 24).days()).size());
        assertEquals(1, YearPictures.weeksOf(run(3 * 24).days()).size());
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
