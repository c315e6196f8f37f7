package org.warmvat.weather.made;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherYear;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.file.NormalsFile;

/** Many made years: they repeat, differ as asked, keep their limits and can be cut into years again. */
class MadeYearsTest {
    private static Normals normals(String place) throws Exception {
        return NormalsFile.read(Path.of("..", "weather-samples", place + "-normals.csv"));
    }

    private static double mean(double[] values, int from, int to) {
        return Arrays.stream(values, from, to).average().orElseThrow();
    }

    private static double deviation(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (values.length - 1));
    }

    /** January and July means of 30 years: within the sampling error of what was asked for (95 % bounds of the chi-square law). */
    @Test
    void monthsSpreadAsAskedFor() throws Exception {
        Normals normals = normals("cool-maritime-hills");
        Weather all = new Weather(MadeYears.of(normals, 30));
        List<WeatherYear> years = WeatherYear.of("made.csv", all);
        assertEquals(30, years.size());
        double[] january = years.stream()
                .mapToDouble(y -> mean(y.weather().table().columns().get(Quantity.AIR), 0, 744))
                .toArray();
        int july = 24 * 181;
        double[] sun = years.stream()
                .mapToDouble(y -> mean(y.weather().table().columns().get(Quantity.GLOBAL), july, july + 744))
                .toArray();
        double[] warm = years.stream()
                .mapToDouble(y -> mean(y.weather().table().columns().get(Quantity.AIR), july, july + 744))
                .toArray();
        assertEquals(1.5, deviation(january), 0.45);
        assertEquals(1.0, deviation(warm), 0.35);
        assertEquals(0.08, deviation(sun) / mean(sun, 0, 30), 0.025);
        assertEquals(normals.months().get(0).airC(), mean(january, 0, 30), 0.9);
    }

    @Test
    void theFirstYearsAreThoseOfAnyLongerRow() throws Exception {
        Normals normals = normals("cool-southern");
        double[] two = MadeYears.of(normals, 2).columns().get(Quantity.AIR);
        double[] four = MadeYears.of(normals, 4).columns().get(Quantity.AIR);
        assertArrayEquals(two, Arrays.copyOf(four, two.length));
        assertEquals(4 * 8760 + 24, four.length);
        int leapDay = 3 * 8760 + 24 * 59;
        assertArrayEquals(
                Arrays.copyOfRange(four, leapDay - 24, leapDay), Arrays.copyOfRange(four, leapDay, leapDay + 24));
    }

    @Test
    void aGivenSpreadOfNoneLeavesOnlyTheSeedAndTheSun() throws Exception {
        Normals usual = normals("cold-continental");
        Normals still = new Normals(
                usual.site(),
                usual.seed(),
                usual.humidity(),
                usual.months().stream()
                        .map(m -> new MonthNormals(
                                m.airC(),
                                m.dailyRangeK(),
                                m.globalKWhPerM2Day(),
                                m.humidity(),
                                m.windMPerS(),
                                OptionalDouble.of(0)))
                        .toList());
        double[] air = MadeYears.of(still, 3).columns().get(Quantity.AIR);
        for (int year = 0; year < 3; year++) {
            assertEquals(usual.months().get(0).airC(), mean(air, 8760 * year, 8760 * year + 744), 0.1);
        }
        assertTrue(MadeYears.origin(still, 3).contains("mean air spreads by month_sd_k"));
        assertTrue(MadeYears.origin(usual, 3).contains("1.5 K in winter and 1.0 K else (common practice, no source)"));
    }

    /** The sunniest place keeps below what can arrive; nothing is doubted but the seams of independent years. */
    @Test
    void manyYearsRaiseNoAlarm() throws Exception {
        HourlyTable table = MadeYears.of(normals("sunny-high-valley"), 3);
        assertEquals(LocalDateTime.of(2025, 1, 1, 0, 0), table.start());
        assertEquals(
                List.of(),
                Doubts.of(new Weather(table)).stream()
                        .filter(doubt -> doubt.kind() != Doubt.Kind.JUMPS)
                        .toList());
    }
}
