package org.warmvat.weather.made;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.file.NormalsFile;
import org.warmvat.weather.file.WarmvatCsvText;
import org.warmvat.weather.file.WeatherFiles;

/** A year made from normals: exact means, physical consistency, repetition, and the committed samples byte for byte. */
class MadeYearTest {
    private static final Path SAMPLES = Path.of("..", "weather-samples");

    private static Normals normals(String sample) throws WeatherRefused, IOException {
        return NormalsFile.read(SAMPLES.resolve(sample + "-normals.csv"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cool-maritime-hills", "cold-continental", "sunny-high-valley", "cool-southern"})
    void theSamplesAreMadeByteForByte(String sample) throws Exception {
        Normals normals = normals(sample);
        String made = WarmvatCsvText.of(MadeYear.of(normals), MadeYear.origin(normals));
        assertEquals(Files.readString(SAMPLES.resolve(sample + ".csv")), made);
        assertTrue(made.contains("invented") && made.contains("synthetic"), "says what it is");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cool-maritime-hills", "cold-continental", "sunny-high-valley", "cool-southern"})
    void monthlyMeansAreTheNormals(String sample) throws Exception {
        Normals normals = normals(sample);
        Weather made = WeatherFiles.read(SAMPLES.resolve(sample + ".csv"));
        for (int month = 0; month < 12; month++) {
            MonthNormals wanted = normals.months().get(month);
            MonthNormals found = MonthStatistics.of(made, month);
            String place = sample + " month " + (month + 1);
            assertEquals(wanted.airC(), found.airC(), 0.1, place);
            assertEquals(1, found.globalKWhPerM2Day() / wanted.globalKWhPerM2Day(), 0.01, place);
            assertEquals(wanted.dailyRangeK(), found.dailyRangeK(), 0.2, place);
            assertEquals(wanted.humidity(), found.humidity(), 0.01, place);
            assertEquals(wanted.windMPerS(), found.windMPerS(), 0.02, place);
        }
    }

    @Test
    void everyHourIsPhysicallyConsistent() throws Exception {
        Weather made = WeatherFiles.demonstration();
        for (int hour = 0; hour < made.hours(); hour++) {
            double closed = made.beamWPerM2(hour) * Math.max(0, made.sun(hour).cosZenith()) + made.diffuseWPerM2(hour);
            // Three roundings to whole watts.
            assertEquals(made.globalWPerM2(hour), closed, 1.6, "hour " + hour);
            assertTrue(made.dewPointC().value(hour) <= made.airC().value(hour), "dew point of hour " + hour);
            if (made.sun(hour).sunlitFraction() == 0) {
                assertEquals(0, made.globalWPerM2(hour), "night of hour " + hour);
            }
        }
    }

    @Test
    void theDemonstrationIsWholeAndAssumesNothing() {
        Weather made = WeatherFiles.demonstration();
        assertEquals(8760, made.hours());
        assertTrue(made.isWholeYear());
        assertEquals(List.of(), made.assumptions());
        assertTrue(made.site().name().contains("invented"));
    }

    @Test
    void aSeedRepeatsAndAnotherDiffers() throws Exception {
        Normals normals = normals("cool-maritime-hills");
        double[] first = MadeYear.of(normals).columns().get(Quantity.AIR);
        assertArrayEquals(first, MadeYear.of(normals).columns().get(Quantity.AIR));
        double[] other = MadeYear.of(normals.withSeed(12)).columns().get(Quantity.AIR);
        assertFalse(Arrays.equals(first, other));
    }

    @Test
    void dewPointNormalsWork() throws Exception {
        Normals relative = normals("cool-maritime-hills");
        List<MonthNormals> months = relative.months().stream()
                .map(m ->
                        new MonthNormals(m.airC(), m.dailyRangeK(), m.globalKWhPerM2Day(), m.airC() - 4, m.windMPerS()))
                .toList();
        Normals dewPoints = new Normals(relative.site(), 5, Quantity.DEW_POINT, months);
        double[] made = MonthCurve.means(MadeYear.of(dewPoints).columns().get(Quantity.DEW_POINT));
        for (int month = 0; month < 12; month++) {
            assertEquals(months.get(month).humidity(), made[month], 0.1);
        }
    }

    /** Within the polar circle the sun stays away in winter, and the normals say so. */
    @Test
    void polarNight() throws Exception {
        Normals base = normals("cold-continental");
        List<MonthNormals> months = new ArrayList<>(base.months());
        for (int month : new int[] {0, 10, 11}) {
            MonthNormals m = months.get(month);
            months.set(month, new MonthNormals(m.airC(), m.dailyRangeK(), 0, m.humidity(), m.windMPerS()));
        }
        months.set(1, new MonthNormals(-11, 9, 0.1, 0.77, 4));
        months.set(2, new MonthNormals(-4, 9, 1, 0.77, 4));
        months.set(3, new MonthNormals(-2, 9, 3, 0.77, 4));
        months.set(9, new MonthNormals(5, 10, 0.2, 0.65, 4));
        months.set(8, new MonthNormals(13, 12, 1.5, 0.54, 3.5));
        Site north = new Site("Far North (invented)", 73, 15, 20, 1);
        Weather made = new Weather(MadeYear.of(new Normals(north, 3, Quantity.RELATIVE_HUMIDITY, months)));
        assertEquals(0, made.globalWPerM2(12));
        assertEquals(0.1, MonthStatistics.of(made, 1).globalKWhPerM2Day(), 0.01);
    }

    @Test
    void moreSunThanCanArriveIsRefused() throws Exception {
        Normals base = normals("cool-maritime-hills");
        List<MonthNormals> months = new ArrayList<>(base.months());
        months.set(11, new MonthNormals(4.5, 4.9, 5, 0.88, 5));
        Normals bright = new Normals(base.site(), 1, Quantity.RELATIVE_HUMIDITY, months);
        List<String> faults =
                assertThrows(WeatherRefused.class, () -> MadeYear.of(bright)).faults();
        assertEquals(
                List.of(
                        "month 12: global_kwh_m2_day 5.00, expected at most 1.30 at latitude 53.1 (0.78 of what arrives above"
                                + " the air)"),
                faults);
    }
}
