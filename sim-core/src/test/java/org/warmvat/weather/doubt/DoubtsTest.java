package org.warmvat.weather.doubt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.sun.Plane;
import org.warmvat.sun.SkyModel;
import org.warmvat.sun.SkyView;
import org.warmvat.weather.HourlyTable;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Site;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** What is said of files spoilt on purpose, and that clean files raise no alarm. */
class DoubtsTest {
    private static final HourlyTable CLEAN = WeatherFiles.demonstration().table();
    private static final int MARCH = 24 * 59;
    private static final int APRIL = 24 * 90;

    private static List<Doubt> spoilt(Consumer<Map<Quantity, double[]>> spoil) {
        return spoilt(CLEAN.site(), spoil);
    }

    private static List<Doubt> spoilt(Site site, Consumer<Map<Quantity, double[]>> spoil) {
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        CLEAN.columns().forEach((quantity, values) -> columns.put(quantity, values.clone()));
        spoil.accept(columns);
        return Doubts.of(new Weather(new HourlyTable(site, CLEAN.start(), CLEAN.stamp(), columns)));
    }

    private static Set<Doubt.Kind> kinds(List<Doubt> suspicions) {
        Set<Doubt.Kind> kinds = EnumSet.noneOf(Doubt.Kind.class);
        suspicions.forEach(s -> kinds.add(s.kind()));
        return kinds;
    }

    private static String sentence(List<Doubt> suspicions, Doubt.Kind kind) {
        return suspicions.stream()
                .filter(s -> s.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind + " in " + suspicions))
                .sentence();
    }

    /** Moves the light of some hours by a number of hours, positive for too late. */
    private static void shift(Map<Quantity, double[]> columns, int from, int to, int hours) {
        for (Quantity quantity : List.of(Quantity.GLOBAL, Quantity.BEAM, Quantity.DIFFUSE)) {
            double[] values = columns.get(quantity);
            if (values != null) {
                double[] before = values.clone();
                for (int i = from; i < to; i++) {
                    values[i] = before[Math.floorMod(i - hours, before.length)];
                }
            }
        }
    }

    private static void scale(Map<Quantity, double[]> columns, Quantity quantity, double factor) {
        double[] values = columns.get(quantity);
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.min(quantity.most(), values[i] * factor);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"cool-maritime-hills", "cold-continental", "sunny-high-valley", "cool-southern"})
    void theSamplesRaiseNoAlarm(String sample) throws Exception {
        Weather weather = WeatherFiles.read(Path.of("..", "weather-samples", sample + ".csv"));
        assertEquals(List.of(), Doubts.of(weather));
    }

    /** Skipped where no folder of real years is named by -Dreal.weather. */
    @Test
    void realYearsRaiseNoAlarm() throws Exception {
        String folder = System.getProperty("real.weather", "");
        Assumptions.assumeTrue(!folder.isEmpty() && Files.isDirectory(Path.of(folder)), "no folder in -Dreal.weather");
        try (var files = Files.newDirectoryStream(Path.of(folder), "*.csv")) {
            for (Path file : files) {
                assertEquals(List.of(), Doubts.of(WeatherFiles.read(file)), file.toString());
            }
        }
    }

    @Test
    void aWholeFileAnHourLate() {
        List<Doubt> found = spoilt(columns -> shift(columns, 0, 8760, 1));
        String sentence = sentence(found, Doubt.Kind.HOUR_SHIFT);
        assertTrue(sentence.contains("with the times moved by -1.0 h"), sentence);
        assertTrue(sentence.contains("The like is seen in 12 months, 2025-01 to 2025-12."), sentence);
        assertTrue(kinds(found).contains(Doubt.Kind.LIGHT_IN_THE_DARK));
    }

    @Test
    void oneMonthAnHourEarly() {
        List<Doubt> found = spoilt(columns -> shift(columns, MARCH, APRIL, -1));
        Doubt shift = found.stream()
                .filter(s -> s.kind() == Doubt.Kind.HOUR_SHIFT)
                .findFirst()
                .orElseThrow();
        assertEquals("2025-03", shift.when());
        assertTrue(shift.sentence().contains("moved by +1.0 h"), shift.sentence());
        assertEquals(
                1, found.stream().filter(s -> s.kind() == Doubt.Kind.HOUR_SHIFT).count());
    }

    /** A stamp in the middle of the hour read as its end: half an hour. */
    @Test
    void halfAnHourOff() {
        Weather right = new Weather(CLEAN);
        Site half = new Site("half", 53.1, -2.4, 120, 0.5);
        List<Doubt> found = spoilt(half, columns -> {});
        assertTrue(right.hours() == 8760);
        assertTrue(sentence(found, Doubt.Kind.HOUR_SHIFT).contains("moved by +0.5 h"), found.toString());
    }

    /** A file whose times are hour starts, read as if they were hour ends, and the other way round: the cure is the stamp. */
    @Test
    void aWrongStampIsCuredByTheRightOne() {
        HourlyTable read = CLEAN.stamped(Stamp.HOUR_START);
        assertEquals(CLEAN.start().plusHours(1), read.start());
        String sentence = sentence(Doubts.of(new Weather(read)), Doubt.Kind.HOUR_SHIFT);
        assertTrue(sentence.contains("\"weather convert FILE --stamp hour_end\""), sentence);
        assertEquals(List.of(), Doubts.of(new Weather(read.stamped(Stamp.HOUR_END))));
        assertEquals(CLEAN.start(), read.stamped(Stamp.HOUR_END).start());
    }

    @Test
    void aWrongClockIsCuredByTheRightOffset() {
        Site east = new Site("east", 53.1, -2.4, 120, 3);
        String sentence = sentence(spoilt(east, columns -> {}), Doubt.Kind.HOUR_SHIFT);
        assertTrue(sentence.contains("\"weather convert FILE --utc-offset 0\""), sentence);
        HourlyTable wrong = new HourlyTable(east, CLEAN.start(), CLEAN.stamp(), CLEAN.columns());
        assertEquals(List.of(), Doubts.of(new Weather(wrong.onClock(0))));
    }

    /** The light of 35 degrees of slope offered as that on the horizontal. */
    @ParameterizedTest
    @ValueSource(strings = {"cool-maritime-hills", "cold-continental", "sunny-high-valley", "cool-southern"})
    void aTiltedPlaneIsSeen(String sample) throws Exception {
        Weather level = WeatherFiles.read(Path.of("..", "weather-samples", sample + ".csv"));
        Plane plane = new Plane(35, level.site().latitudeDeg() > 0 ? 180 : 0);
        double[] global = new double[level.hours()];
        for (int hour = 0; hour < global.length; hour++) {
            double tilted = plane.irradiance(SkyModel.HAY_DAVIES, 0.2, level.light(hour), level.sun(hour), SkyView.OPEN)
                    .totalWPerM2();
            global[hour] = Math.min(Quantity.GLOBAL.most(), tilted);
        }
        Map<Quantity, double[]> columns = new EnumMap<>(level.table().columns());
        columns.remove(Quantity.BEAM);
        columns.remove(Quantity.DIFFUSE);
        columns.put(Quantity.GLOBAL, global);
        Weather tilted = new Weather(new HourlyTable(level.site(), level.start(), level.stamp(), columns));
        String sentence = sentence(Doubts.of(tilted), Doubt.Kind.TILTED);
        assertTrue(sentence.contains("Likely cure: ask the service for slope 0"), sentence);
    }

    @Test
    void theSunConfirmsGoodTimesOnly() {
        assertTrue(SunCheck.sentence(new Weather(CLEAN)).startsWith("The sun confirms the times"));
        HourlyTable off = CLEAN.onClock(1);
        assertTrue(SunCheck.sentence(new Weather(off)).startsWith("The sun does not confirm the times"));
        Map<Quantity, double[]> global = new EnumMap<>(CLEAN.columns());
        global.remove(Quantity.BEAM);
        global.remove(Quantity.DIFFUSE);
        Weather alone = new Weather(new HourlyTable(CLEAN.site(), CLEAN.start(), CLEAN.stamp(), global));
        assertTrue(SunCheck.sentence(alone).contains("the middle of the days' light lies"));
        assertTrue(SunCheck.sentence(new Weather(alone.table().onClock(1)))
                .startsWith("The sun does not confirm the times (a stamp at the hour's end, UTC+1): the middle"));
        assertEquals(
                "The sun can say nothing of the times: there are too few hours with light.",
                SunCheck.sentence(new Weather(alone.table().part(0, 48))));
        assertEquals(
                "The sun can say nothing of the times: there are too few hours with beam irradiance.",
                SunCheck.sentence(new Weather(CLEAN.part(0, 24))));
    }

    @Test
    void withGlobalAloneLopsidedDaysAreSeen() {
        List<Doubt> found = spoilt(columns -> {
            columns.remove(Quantity.BEAM);
            columns.remove(Quantity.DIFFUSE);
            shift(columns, 0, 8760, 1);
        });
        String sentence = sentence(found, Doubt.Kind.LOPSIDED_DAYS);
        assertTrue(
                sentence.contains(
                        "min after the sun's; likely cure: another clock, \"weather convert FILE --utc-offset 1\""),
                sentence);
        assertTrue(spoilt(columns -> {
                    columns.remove(Quantity.BEAM);
                    columns.remove(Quantity.DIFFUSE);
                })
                .isEmpty());
    }

    @Test
    void signsOfThePlace() {
        Site east = new Site("east", 53.1, 72.4, 120, 0);
        assertTrue(sentence(spoilt(east, columns -> {}), Doubt.Kind.PLACE)
                .startsWith("Whole file: longitude 72.4 and UTC offset 0.0 h lie 4.8 h apart; check the sign"));
        Site south = new Site("south", -53.1, -2.4, 120, 0);
        List<Doubt> found = spoilt(south, columns -> {});
        assertTrue(sentence(found, Doubt.Kind.PLACE).contains("which is summer at latitude -53.1"));
        assertTrue(kinds(found).contains(Doubt.Kind.LIGHT_IN_THE_DARK));
    }

    @Test
    void units() {
        assertTrue(sentence(
                        spoilt(columns -> {
                            double[] air = columns.get(Quantity.AIR);
                            double[] dew = columns.get(Quantity.DEW_POINT);
                            for (int i = 0; i < air.length; i++) {
                                air[i] = Math.min(60, 32 + 1.8 * air[i]);
                                dew[i] = Math.min(45, 32 + 1.8 * dew[i]);
                            }
                        }),
                        Doubt.Kind.UNIT)
                .contains("is the column in Fahrenheit?"));
        assertTrue(sentence(spoilt(columns -> scale(columns, Quantity.WIND, 3.6)), Doubt.Kind.UNIT)
                .contains("km/h are to be divided by 3.6"));
        assertTrue(sentence(spoilt(columns -> scale(columns, Quantity.PRESSURE, 0.75)), Doubt.Kind.UNIT)
                .contains("mmHg are to be multiplied by 1.333"));
        assertTrue(sentence(spoilt(new Site("high", 53.1, -2.4, 1500, 0), columns -> {}), Doubt.Kind.UNIT)
                .contains("is it reduced to sea level?"));
        List<Doubt> megajoules = spoilt(columns -> {
            columns.remove(Quantity.BEAM);
            columns.remove(Quantity.DIFFUSE);
            scale(columns, Quantity.GLOBAL, 0.0036);
        });
        assertTrue(sentence(megajoules, Doubt.Kind.UNIT).contains("MJ/m² are to be multiplied by 277.8"));
        List<Doubt> kilojoules = spoilt(columns -> {
            columns.remove(Quantity.BEAM);
            columns.remove(Quantity.DIFFUSE);
            scale(columns, Quantity.GLOBAL, 3.6);
        });
        assertTrue(sentence(kilojoules, Doubt.Kind.UNIT).contains("kJ/m² are to be divided by 3.6"));
        List<Doubt> swapped = spoilt(columns -> {
            double[] air = columns.get(Quantity.AIR);
            columns.put(Quantity.AIR, columns.get(Quantity.DEW_POINT));
            columns.put(Quantity.DEW_POINT, air);
        });
        assertTrue(sentence(swapped, Doubt.Kind.UNIT).contains("the dew point lies above the air temperature"));
    }

    @Test
    void columnsThatDoNotBelongTogether() {
        List<Doubt> swapped = spoilt(columns -> {
            double[] beam = columns.get(Quantity.BEAM);
            columns.put(Quantity.BEAM, columns.get(Quantity.DIFFUSE));
            columns.put(Quantity.DIFFUSE, beam);
        });
        assertTrue(sentence(swapped, Doubt.Kind.DOES_NOT_CLOSE).contains("check which column is which"));
        List<Doubt> flat = spoilt(columns -> {
            for (int i = 0; i < 8760; i++) {
                columns.get(Quantity.BEAM)[i] = columns.get(Quantity.GLOBAL)[i] - columns.get(Quantity.DIFFUSE)[i];
            }
            scale(columns, Quantity.BEAM, 1);
        });
        assertTrue(sentence(flat, Doubt.Kind.DOES_NOT_CLOSE).contains("beam seems to be given on the horizontal"));
    }

    @Test
    void stuckSensorsAndLeaps() {
        List<Doubt> stuck = spoilt(columns -> Arrays.fill(columns.get(Quantity.AIR), MARCH + 100, MARCH + 130, 6.2));
        assertEquals(
                "2025-03: air_c stands at 6.2 for 30 hours, to 2025-03-06T09:00; a stuck sensor or filled-in values? Take that"
                        + " stretch from a neighbouring station, or leave it empty for --fill-holes HOURS.",
                sentence(stuck, Doubt.Kind.STUCK));
        List<Doubt> dead = spoilt(columns -> {
            columns.remove(Quantity.BEAM);
            columns.remove(Quantity.DIFFUSE);
            Arrays.fill(columns.get(Quantity.GLOBAL), MARCH + 100, MARCH + 200, 0);
        });
        assertTrue(sentence(dead, Doubt.Kind.STUCK).contains("hours of daylight in a row"));
        List<Doubt> steady = spoilt(columns -> Arrays.fill(columns.get(Quantity.GLOBAL), MARCH + 33, MARCH + 40, 250));
        assertTrue(sentence(steady, Doubt.Kind.STUCK).contains("global_w_m2 stands at the same value for 7 hours"));
        List<Doubt> leap = spoilt(columns -> columns.get(Quantity.AIR)[APRIL + 5] = -40);
        assertTrue(sentence(leap, Doubt.Kind.JUMPS)
                .startsWith("2025-04: the air temperature leaps by more than 12 K" + " within an hour 2 times"));
    }

    @Test
    void brighterThanAClearSky() {
        List<Doubt> found = spoilt(columns -> {
            for (int i = MARCH; i < APRIL; i++) {
                columns.get(Quantity.DIFFUSE)[i] = Math.min(1200, 4 * columns.get(Quantity.DIFFUSE)[i]);
            }
        });
        assertTrue(sentence(found, Doubt.Kind.TOO_BRIGHT).startsWith("2025-03: "));
    }
}
