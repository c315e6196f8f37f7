package org.warmvat.cli.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each kind of chart: what it says in place of itself, and that its words stand in both forms. */
class KindsTest {

    private static final LocalDateTime NEW_YEAR = LocalDate.of(2025, 1, 1).atStartOfDay();

    private static void assertSays(Drawing drawing, String alternative, String... words) throws Pictures.CannotDraw {
        assertEquals(alternative, drawing.alternative());
        Picture picture = Pictures.of(() -> List.of(drawing)).get(0);
        for (byte[] svg : List.of(picture.svg(), picture.narrowSvg())) {
            String text = new String(svg, StandardCharsets.UTF_8);
            for (String word : words) {
                assertTrue(text.contains(">" + word), drawing.name() + " lacks " + word);
            }
        }
    }

    @Test
    void linesOverTime() throws Pictures.CannotDraw {
        Drawing drawing = LineChart.overTime("a", "Cold days", NEW_YEAR, NEW_YEAR.plusDays(2))
                .caption("how")
                .strip("slurry, °C", 2)
                .band(
                        "mean of each day",
                        "lowest to highest",
                        Look.SLURRY,
                        Band.ofEach(24, IntStream.range(0, 48).asDoubleStream().toArray()))
                .level("set-point", Look.SETPOINT, 37)
                .stripWithZero("heat, W", 50)
                .line("heat", Look.SUN, new Points(new double[] {24, 26, 26, 28}, new double[] {5, 5, 25, 25}))
                .spell("power cut", 6, 12)
                .upright("refilled", 40);
        assertSays(
                drawing,
                "Cold days, 1 January 00:00 to 3 January 00:00. slurry, °C: mean of each day: lowest 11.5 on 1 January 12:00,"
                        + " highest 35.5 on 2 January 12:00, at the end 35.5; lowest to highest: from 0 to 47; set-point: 37"
                        + " throughout. heat, W: heat: lowest 5 on 2 January 00:00, highest 25 on 2 January 02:00, at the end"
                        + " 25. Shaded: power cut, 1 January 06:00 to 1 January 12:00. Marked: refilled on 2 January 16:00.",
                "Cold days",
                "slurry, °C",
                "heat, W",
                "power cut",
                "refilled",
                "1 Jan",
                "lowest to highest");
    }

    @Test
    void linesOverAQuantity() throws Pictures.CannotDraw {
        double[] watts = {0, 100, 200, 300};
        Drawing drawing = LineChart.over("a", "Short", "rated power, W", 0, 300)
                .stripWithZero("hours", 1)
                .dotted("hours short", Look.FIRST, new Points(watts, new double[] {900, 40, Double.NaN, 0}))
                .mark("yours", 100, 40);
        assertSays(
                drawing,
                "Short, over rated power, W from 0 to 300. hours: hours short: lowest 0 at 300, highest 900 at 0, at the end 0."
                        + " Marked: yours at 100: 40.",
                "rated power, W",
                "hours short",
                "  yours");
    }

    @Test
    void barsByMonth() throws Pictures.CannotDraw {
        List<YearMonth> months = Stream.iterate(YearMonth.of(2025, 1), month -> month.plusMonths(1))
                .limit(12)
                .toList();
        double[] rising = IntStream.range(0, 12).asDoubleStream().toArray();
        Drawing drawing = BarChart.byMonth("a", "Heat", "kWh a month", months)
                .stack("sun", Look.SUN, rising)
                .stack("nothing", Look.BACKUP, new double[12])
                .line("need", Look.NEED, rising);
        assertSays(
                drawing,
                "Heat, kWh a month. sun: lowest 0 in January, highest 11 in December. need: lowest 0 in January,"
                        + " highest 11 in December.",
                "Jan",
                "sun",
                "need");
    }

    @Test
    void bothEndsOfThreeYearsOfMonthsAreNamedWithTheirYears() throws Pictures.CannotDraw {
        List<YearMonth> months = Stream.iterate(YearMonth.of(2023, 1), month -> month.plusMonths(1))
                .limit(36)
                .toList();
        double[] rising = IntStream.range(0, 36).asDoubleStream().toArray();
        Drawing drawing = BarChart.byMonth("a", "Heat", "kWh a month", months).stack("sun", Look.SUN, rising);
        assertSays(drawing, "Heat, kWh a month. sun: lowest 0 in January 2023, highest 35 in December 2025.", "Jan 23");
    }

    @Test
    void rankedBars() throws Pictures.CannotDraw {
        Drawing drawing = RankedBars.of("a", "Loss by part")
                .bar("wall", Look.SLURRY, 12, "12 W")
                .bar("steel legs", Look.SLURRY, -3, "-3 W");
        assertSays(drawing, "Loss by part. wall: 12 W; steel legs: -3 W.", "wall", "12 W", "steel legs", "-3 W");
    }

    @Test
    void pointsAndAFront() throws Pictures.CannotDraw {
        Drawing drawing = PointChart.of("a", "Choice", "cost, EUR", "heat, kWh")
                .points("all runs", Look.SIXTH, new Points(new double[] {1, 2, 3}, new double[] {9, 5, 7}))
                .front("best", Look.BACKUP, new Points(new double[] {1, 2}, new double[] {9, 5}))
                .mark("proposed", 2, 5);
        assertSays(
                drawing,
                "Choice: heat, kWh over cost, EUR. 3 points, all runs: lowest 5 at 2, highest 9 at 1. 2 joined,"
                        + " best: lowest 5 at 2, highest 9 at 1. Marked: proposed at 2: 5.",
                "cost, EUR",
                "best");
    }

    @Test
    void aHistogramCountsEveryFiniteValueOnce() throws Pictures.CannotDraw {
        double[] values = IntStream.concat(IntStream.range(0, 100), IntStream.range(40, 60))
                .asDoubleStream()
                .toArray();
        values[7] = Double.NaN;
        Drawing drawing =
                Histogram.of("a", "Net energy", "net energy, kWh", values).upright("as designed", 50);
        assertSays(
                drawing,
                "Net energy: 119 values of net energy, kWh from 0 to 99, half of them between 31 and 70, in the middle 50."
                        + " Marked: as designed at 50.",
                "how many of 119",
                "as designed");
    }

    @Test
    void evenOneValueHasAHistogram() throws Pictures.CannotDraw {
        assertEquals(
                1, Pictures.of(() -> List.of(Histogram.of("a", "b", "c", 5))).size());
    }

    @Test
    void aThinnedLineKeepsFirstLowestHighestAndLastOfEachColumn() {
        double[] y = new double[10_000];
        Arrays.setAll(y, i -> Math.sin(i * 0.7) + (i == 5_005 ? 9 : i == 5_007 ? -9 : 0));
        Points thinned = Points.ends(y).thinned(0, 10_000, 100);
        assertTrue(thinned.x().length <= 404, "points left: " + thinned.x().length);
        assertEquals(1, thinned.x()[0]);
        assertEquals(10_000, thinned.x()[thinned.x().length - 1]);
        assertEquals(y[5_005], Arrays.stream(thinned.y()).max().orElseThrow());
        assertEquals(y[5_007], Arrays.stream(thinned.y()).min().orElseThrow());
        for (int i = 1; i < thinned.x().length; i++) {
            assertTrue(thinned.x()[i] > thinned.x()[i - 1], "goes back at " + i);
        }
    }

    @Test
    void meansAreStepsAndTheLastMayBeShort() {
        Points means = Points.means(new double[] {1, 3, 5}, 2);
        assertArrayEquals(new double[] {0, 2, 2, 3}, means.x());
        assertArrayEquals(new double[] {2, 2, 5, 5}, means.y());
    }

    @Test
    void numbersAreToldWithThreeFigures() {
        assertEquals(
                List.of("0", "0.0356", "1.25", "12.3", "124", "12346", "-3.5", "none"),
                Stream.of(0.0, 0.03556, 1.25, 12.34, 123.6, 12345.6, -3.5, Double.POSITIVE_INFINITY)
                        .map(Told::number)
                        .toList());
    }
}
