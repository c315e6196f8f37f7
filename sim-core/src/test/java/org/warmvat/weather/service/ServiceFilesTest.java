package org.warmvat.weather.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Stamp;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.doubt.SunCheck;
import org.warmvat.weather.file.WeatherFiles;

/** One invented year in the shapes of public services: recognised by content, read to the same year, its times confirmed by the sun. */
class ServiceFilesTest {
    private static Weather year;
    private static ServiceTexts texts;

    @BeforeAll
    static void read() throws WeatherRefused, IOException {
        year = WeatherFiles.read(Path.of("..", "weather-samples", "cold-continental.csv"));
        texts = new ServiceTexts(year);
    }

    private static Weather parse(String text) throws WeatherRefused {
        return WeatherFiles.parse("download.csv", text);
    }

    private static double kWhPerM2(Weather weather, String part) {
        double sum = 0;
        for (int hour = 0; hour < weather.hours(); hour++) {
            sum += switch (part) {
                case "global" -> weather.globalWPerM2(hour);
                case "beam" -> weather.beamWPerM2(hour);
                default -> weather.diffuseWPerM2(hour);
            };
        }
        return sum / 1000;
    }

    private static void assertTheYear(Weather read, String kind, double beamWithin) {
        String told = read.assumptions().get(0);
        assertTrue(told.startsWith("Read as " + kind), told);
        assertEquals(LocalDateTime.of(2025, 1, 1, 0, 0), read.start(), kind);
        assertEquals(8760, read.hours(), kind);
        assertEquals(year.site().utcOffsetH(), read.site().utcOffsetH(), kind);
        assertEquals(year.site().longitudeDeg(), read.site().longitudeDeg(), 0.01, kind);
        assertEquals(kWhPerM2(year, "global"), kWhPerM2(read, "global"), 0.006 * kWhPerM2(year, "global"), kind);
        assertEquals(kWhPerM2(year, "beam"), kWhPerM2(read, "beam"), beamWithin * kWhPerM2(year, "beam"), kind);
        assertEquals(kWhPerM2(year, "diffuse"), kWhPerM2(read, "diffuse"), 0.01 * kWhPerM2(year, "diffuse"), kind);
        assertEquals(List.of(), Doubts.of(read), kind);
        String sun = SunCheck.sentence(read);
        assertTrue(sun.startsWith("The sun confirms the times"), kind + ": " + sun);
    }

    private static void assertAir(Weather read, double within) {
        for (int hour = 2; hour < 8758; hour += 101) {
            double s = 3600.0 * hour + read.stamp().secondsIntoHour();
            assertEquals(year.airC().at(s), read.airC().at(s), within, "hour " + hour);
        }
    }

    @Test
    void tmy3AsPublished() throws WeatherRefused {
        Weather read = parse(texts.tmy3(false));
        assertTheYear(read, "a typical year in the TMY3 layout: a row's time", 0.001);
        assertEquals(Stamp.HOUR_END, read.stamp());
        assertAir(read, 0.051);
    }

    @Test
    void tmy3SavedAgainByASpreadsheet() throws WeatherRefused {
        Weather read = parse("\uFEFF".substring(1) + texts.tmy3(true));
        assertTheYear(read, "a typical year in the TMY3 layout, saved again by a spreadsheet", 0.001);
        assertAir(read, 0.051);
    }

    /** A German spreadsheet parts cells by semicolons and writes decimal commas. */
    @Test
    void tmy3SavedWithSemicolons() throws WeatherRefused {
        String text = texts.tmy3(true).replace(',', ';').replaceAll("(\\d)\\.(\\d)", "$1,$2");
        assertAir(parse(text), 0.051);
    }

    @Test
    void tmy2InFixedColumns() throws WeatherRefused {
        Weather read = parse(texts.tmy2());
        assertTheYear(read, "a typical year in the TMY2 layout", 0.001);
        assertEquals("INVENTED PLACE ZZ", read.site().name());
        assertAir(read, 0.051);
    }

    /** West and south: the clock behind universal time, with its sign before or after a blank. */
    @Test
    void tmy2OfTheWest() {
        String rows = "\n 61010101" + "0".repeat(133) + "\n";
        for (String offset : List.of(" -5", "- 5", "-05")) {
            var site = Recognised.in(" 99001 INVENTED               ZZ " + offset + " S 42 54 W  78 42   215" + rows)
                    .orElseThrow()
                    .layout()
                    .site();
            assertEquals(-5, Double.parseDouble(site.utcOffsetH().typed().orElseThrow()));
            assertEquals(-42.9, Double.parseDouble(site.latitudeDeg().typed().orElseThrow()), 1e-9);
            assertEquals(-78.7, Double.parseDouble(site.longitudeDeg().typed().orElseThrow()), 1e-9);
        }
    }

    /** Nines over the whole width of a column are no value; 9.9 degrees and 999 W/m2 are. */
    @Test
    void missingCodesOfTmy2AreThoseOfTheColumn() throws WeatherRefused {
        String[] lines = texts.tmy2().split("\n");
        lines[100] =
                lines[100].substring(0, 17) + "0999" + lines[100].substring(21, 67) + "  99" + lines[100].substring(71);
        lines[101] = lines[101].substring(0, 67) + "9999" + lines[101].substring(71);
        Weather read = parse(String.join("\n", lines));
        assertEquals(9.9, read.airC().value(99), 1e-9);
        assertEquals(999, read.table().columns().get(Quantity.GLOBAL)[99]);
        assertTrue(read.assumptions()
                .contains("1 missing values of air_c were filled by straight lines; the longest gap was 1 h."));
    }

    @Test
    void pvgisTypicalYear() throws WeatherRefused {
        Weather read = parse(texts.pvgisTypicalYear());
        assertTheYear(read, "a typical year of PVGIS: times are universal", 0.02);
        assertEquals(Stamp.HOUR_START, read.stamp());
        assertAir(read, 0.006);
        assertTrue(read.assumptions().get(0).contains("10.6 min after the full hour"));
    }

    /** Instants half an hour after the times, as of newer files, at them, and before them. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0, -0.2})
    void pvgisTypicalYearWithOtherInstants(double offsetH) throws WeatherRefused {
        Weather read = parse(texts.pvgisTypicalYear(offsetH));
        assertTheYear(read, "a typical year of PVGIS: times are universal", 0.02);
        assertTrue(
                read.assumptions().stream().noneMatch(told -> told.contains("were filled")),
                read.assumptions().toString());
    }

    /** Of 8760 instants come 8760 hours, none of them invented at the end. */
    @Test
    void pvgisHourlyEndsWithItsLastInstant() throws WeatherRefused {
        Weather read = parse(texts.pvgisHourly(0, true));
        assertEquals(8760, read.hours());
        assertTrue(
                read.assumptions().stream().noneMatch(told -> told.contains("were filled")),
                read.assumptions().toString());
    }

    @Test
    void pvgisHourlyWithPartsAndWithout() throws WeatherRefused {
        Weather parts = parse(texts.pvgisHourly(0, true));
        assertEquals(kWhPerM2(year, "global"), kWhPerM2(parts, "global"), 0.006 * kWhPerM2(year, "global"));
        assertEquals(kWhPerM2(year, "diffuse"), kWhPerM2(parts, "diffuse"), 0.01 * kWhPerM2(year, "diffuse"));
        assertTrue(parts.assumptions().get(0).startsWith("Read as an hourly series of PVGIS: times are universal"));
        assertTrue(parts.assumptions().get(0).contains("11.0 min after the full hour"));
        assertAir(parts, 0.3);
        Weather global = parse(texts.pvgisHourly(0, false));
        assertEquals(kWhPerM2(parts, "global"), kWhPerM2(global, "global"), 0.1);
        assertTrue(SunCheck.sentence(global).contains("the middle of the days' light lies"));
    }

    @Test
    void nsrdbByTheHalfAndTheQuarter() throws WeatherRefused {
        for (int step : List.of(15, 30)) {
            Weather read = parse(texts.nsrdb(step, 365));
            assertTheYear(read, "a file of NSRDB: rows every " + step + " min are instants", 0.02);
            assertEquals(Stamp.HOUR_MIDDLE, read.stamp());
            assertAir(read, 0.8);
        }
    }

    @Test
    void nasaPowerInBothClocks() throws WeatherRefused {
        Weather bands = parse(texts.nasaPower(false));
        assertTheYear(
                bands,
                "hourly values of NASA POWER: a row is the mean of the hour that begins at its time; times are those of bands",
                0.001);
        assertAir(bands, 0.006);
        assertTrue(bands.assumptions()
                .contains("1 missing values of dew_point_c were filled by straight lines; the longest gap was 1 h."));
        assertTheYear(parse(texts.nasaPower(true)), "hourly values of NASA POWER", 0.001);
    }

    /** What is not of a known kind is no weather for want of a layout, and the message says so at once. */
    @Test
    void unknownTextsAreToldEverythingAtOnce() {
        String german = "Datum;Zeit;Temp;Strahlung\n1.1.2024;1:00;-0,5;0\n1.1.2024;24:00;-0,6;0\n".repeat(1)
                + "2.1.2024;1:00;-0,7;0\n".repeat(40);
        String said = org.junit.jupiter.api.Assertions.assertThrows(WeatherRefused.class, () -> parse(german))
                .getMessage();
        assertTrue(
                said.contains(
                        "saved by a spreadsheet, it seems: semicolons between the cells, decimal commas, dates like 1.1.2024, 24:00"
                                + " for midnight"),
                said);
        assertTrue(said.contains("--layout"), said);
        assertEquals(1, said.lines().count());
    }

    @Test
    void kindsAreToldByContentAlone() {
        assertTrue(Recognised.in("").isEmpty());
        assertTrue(Recognised.in("time,air_c\n2025-01-01T01:00,3\n").isEmpty());
        assertEquals(
                "a typical year of PVGIS",
                Recognised.in(texts.pvgisTypicalYear()).orElseThrow().kind());
        String tilted = Recognised.in(texts.pvgisHourly(35, true)).orElseThrow().kind();
        assertTrue(tilted.contains("35°"), String.format(Locale.ROOT, "%s", tilted));
    }

    /**
     * Real files of services, where a folder {@code services} is in that of -Dreal.weather. The sums of the instants of the typical year of PVGIS
     * are 1435.9 global, 1591.6 beam and 570.9 kWh/m2 diffuse.
     */
    @Test
    void realFiles() throws Exception {
        String folder = System.getProperty("real.weather", "");
        Path services = Path.of(folder, "services");
        Assumptions.assumeTrue(
                !folder.isEmpty() && Files.isDirectory(services), "no folder services in -Dreal.weather");
        Weather pvgis = WeatherFiles.read(services.resolve("pvgis_tmy_45n_8e.csv"));
        assertEquals(8760, pvgis.hours());
        assertEquals(1435.9, kWhPerM2(pvgis, "global"), 5);
        assertEquals(1591.6, kWhPerM2(pvgis, "beam"), 16);
        assertEquals(570.9, kWhPerM2(pvgis, "diffuse"), 3);
        assertTrue(SunCheck.sentence(pvgis).startsWith("The sun confirms the times"));
        Weather nsrdb = WeatherFiles.read(services.resolve("nsrdb_half_hourly_excerpt.csv"));
        assertTrue(nsrdb.assumptions().get(0).startsWith("Read as a file of NSRDB: rows every 30 min"));
        assertEquals(-7, nsrdb.site().utcOffsetH());
        Weather tmy3 = WeatherFiles.read(services.resolve("tmy3_seattle_resaved_by_a_spreadsheet.csv"));
        assertTrue(tmy3.assumptions().get(0).contains("saved again by a spreadsheet"));
        assertEquals(8760, tmy3.hours());
        assertEquals(List.of(), Doubts.of(tmy3));
        assertTrue(SunCheck.sentence(tmy3).startsWith("The sun confirms the times"));
    }
}
