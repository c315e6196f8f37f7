package org.warmvat.weather.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.warmvat.weather.Humidity;
import org.warmvat.weather.Site;
import org.warmvat.weather.SkyTemperature;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;

/** Warmvat's own layout: what is read, what is assumed, and every refusal in full. */
class WarmvatCsvTest {
    private static Weather read(String text) throws WeatherRefused {
        return WeatherFiles.parse("year.csv", text);
    }

    private static List<String> faults(String text) {
        return assertThrows(WeatherRefused.class, () -> read(text)).faults();
    }

    private static String day(String names, String cells) {
        return Text.hours(names, 24, i -> cells);
    }

    @Test
    void theExampleOfTheDocumentation() throws WeatherRefused {
        Weather weather = read(Text.HEADER + """
                # origin: made from monthly normals, seed 11
                time,air_c,dew_point_c,wind_m_s,pressure_hpa,global_w_m2,beam_w_m2,diffuse_w_m2,cloud_fraction,longwave_w_m2,ground_c
                2025-01-01T01:00,4.1,2.0,3.2,1002,0,0,0,0.7,,
                2025-01-01T02:00,5.1,2.2,3.0,1003,0,0,0,0.7,,
                """);
        assertEquals(new Site("Thornacre (invented)", 53.1, -2.4, 120, 0), weather.site());
        assertEquals(LocalDateTime.of(2025, 1, 1, 0, 0), weather.start());
        assertEquals(2, weather.hours());
        assertEquals(4.1, weather.airC().at(0));
        assertEquals(4.6, weather.airC().at(5400), 1e-12);
        assertEquals(2.1, weather.dewPointC().at(5400), 1e-12);
        assertEquals(3.1, weather.windMPerS().at(5400), 1e-12);
        assertEquals(1003, weather.pressureHPa(1));
        assertEquals(0, weather.globalWPerM2(1));
        assertFalse(weather.isWholeYear());
        assertTrue(weather.ground().isEmpty());
        assertTrue(weather.groundColumnC().isEmpty());
        assertEquals(List.of(), weather.assumptions());
    }

    @Test
    void absentColumnsAreAssumedAndTold() throws WeatherRefused {
        Weather weather = read(day("air_c,global_w_m2", "10,0"));
        assertEquals(3, weather.windMPerS().at(0));
        assertEquals(
                0.75, Humidity.relativeHumidityFraction(10, weather.dewPointC().at(0)), 1e-9);
        // Standard atmosphere at 120 m: 1013.25 (1 - 2.25577e-5 120)^5.25588 = 998.9 hPa.
        assertEquals(998.9, weather.pressureHPa(0), 0.05);
        assertEquals(
                List.of(
                        "The weather file has no humidity: a relative humidity of 0.75 was assumed.",
                        "The weather file has no wind: 3 m/s at 10 m was assumed.",
                        "The weather file has no air pressure: the standard atmosphere at 120 m, 999 hPa, was assumed.",
                        "The weather file has neither long-wave irradiance nor cloud: a cloud fraction of 0.5 was assumed"
                                + " for the sky temperature.",
                        "The weather file has only global irradiance: it was split into beam and diffuse by Erbs, Klein"
                                + " and Duffie (1982)."),
                weather.assumptions());
    }

    @Test
    void relativeHumidityStandsForDewPoint() throws WeatherRefused {
        Weather weather = read(day("air_c,global_w_m2,relative_humidity", "10,0,0.5"));
        assertEquals(Humidity.dewPointC(10, 0.5), weather.dewPointC().at(100), 1e-12);
        Weather both = read(day("air_c,global_w_m2,relative_humidity,dew_point_c", "10,0,0.5,8"));
        assertEquals(8, both.dewPointC().at(100), 1e-12);
    }

    @Test
    void skyRunsBetweenStampsOrStepsWithLongwave() throws WeatherRefused {
        Weather cloudy = read(Text.hours(
                "air_c,dew_point_c,pressure_hpa,global_w_m2,cloud_fraction", 24, i -> (5 + i) + ",3,1000,0,0.4"));
        double atTwo = SkyTemperature.ofEmissivityC(
                SkyTemperature.cloudyEmissivity(SkyTemperature.clearEmissivity(3, 2, 1000), 0.4, 0.8), 6);
        double atThree = SkyTemperature.ofEmissivityC(
                SkyTemperature.cloudyEmissivity(SkyTemperature.clearEmissivity(3, 3, 1000), 0.4, 0.8), 7);
        assertEquals((atTwo + atThree) / 2, cloudy.skyC(2, 2.5 * 3600), 1e-9);
        Weather measured = read(Text.hours("air_c,global_w_m2,longwave_w_m2", 24, i -> "5,0," + (300 + i)));
        assertEquals(SkyTemperature.ofLongwaveC(302), measured.skyC(2, 2 * 3600), 1e-12);
        assertEquals(SkyTemperature.ofLongwaveC(302), measured.skyC(2, 3 * 3600), 1e-12);
    }

    @Test
    void stampsAtTheStartAndTheMiddle() throws WeatherRefused {
        String start = day("air_c,global_w_m2", "10,0").replace("hour_end", "hour_start");
        assertEquals(LocalDateTime.of(2025, 1, 1, 1, 0), read(start).start());
        assertEquals(0, read(start).airC().firstStampS());
        String middle = Text.rows(
                Text.HEADER.replace("hour_end", "hour_middle") + "time,air_c,global_w_m2\n",
                LocalDateTime.of(2025, 1, 1, 0, 30),
                24,
                i -> "10,0");
        assertEquals(LocalDateTime.of(2025, 1, 1, 0, 0), read(middle).start());
        assertEquals(1800, read(middle).airC().firstStampS());
    }

    @Test
    void midnightMayBeTwentyFourOClockAndTimesMayHaveASpaceAndSeconds() throws WeatherRefused {
        Weather weather = read(Text.HEADER + """
                time,air_c,global_w_m2
                2024-02-28 23:00:00,1,0
                2024-02-28T24:00,2,0
                2024-02-29T01:00,3,0
                """);
        assertEquals(3, weather.hours());
        assertEquals(LocalDateTime.of(2024, 2, 28, 22, 0), weather.start());
    }

    @Test
    void wordsOfTheHeaderAreAllChecked() {
        String text = """
                # warmvat weather 1
                # sit: Nowhere
                # latitude_deg: 95
                # longitude_deg: east
                # utc_offset_h: 0
                # utc_offset_h: 0
                # stamp: end
                time,air_c,global_w_m2
                2025-01-01T01:00,1,0
                """;
        assertEquals(
                List.of(
                        "year.csv line 2: unknown key \"sit\", expected one of site, latitude_deg, longitude_deg, elevation_m,"
                                + " utc_offset_h, stamp, origin, note (did you mean site?)",
                        "year.csv line 6: key utc_offset_h stands twice",
                        "year.csv line 3: latitude_deg \"95\", expected a number from -90 to 90",
                        "year.csv line 4: longitude_deg \"east\", expected a number from -180 to 180",
                        "year.csv: no line \"# elevation_m: ...\", expected a number from -450 to 6000",
                        "year.csv line 7: stamp \"end\", expected hour_start, hour_middle or hour_end"),
                faults(text));
    }

    @Test
    void anotherVersionIsRefused() {
        assertEquals(
                List.of("year.csv line 1: expected \"# warmvat weather 1\""),
                faults(day("air_c,global_w_m2", "1,0").replace("weather 1", "weather 2")));
    }

    @Test
    void columnNamesAreChecked() {
        assertEquals(
                List.of(
                        "year.csv line 8: unknown column \"wind_ms\", expected one of time, air_c, dew_point_c,"
                                + " relative_humidity, wind_m_s, pressure_hpa, global_w_m2, beam_w_m2, diffuse_w_m2,"
                                + " cloud_fraction, longwave_w_m2, ground_c (did you mean wind_m_s?)",
                        "year.csv line 8: column \"beam_w_m2\" stands twice",
                        "year.csv line 8: no column air_c, which is required",
                        "year.csv line 8: no irradiance, expected global_w_m2 or two of global_w_m2, beam_w_m2 and"
                                + " diffuse_w_m2"),
                faults(day("wind_ms,beam_w_m2,beam_w_m2", "1,0,0")));
    }

    @Test
    void everyFaultyCellIsNamedWithWhatIsAllowed() {
        String text = Text.hours("air_c,global_w_m2,wind_m_s,relative_humidity", 6, i -> switch (i) {
            case 0 -> "1,0,-3.2,0.8";
            case 1 -> "1,2000,3,85";
            case 2 -> "\"1,5\",0,3,0.8";
            case 3 -> "NaN,0,3,0.8";
            case 4 -> "1,0,3";
            default -> "0x1p3,0,3d,0.8";
        });
        assertEquals(
                List.of(
                        "year.csv line 9: wind_m_s \"-3.2\", expected 0 to 60",
                        "year.csv line 10: global_w_m2 \"2000\", expected -20 to 1600 (is this kJ/m2?)",
                        "year.csv line 10: relative_humidity \"85\", expected 0 to 1 (a fraction: is this percent, tenths or eighths?)",
                        "year.csv line 11: air_c \"1,5\", expected a number with a decimal point or nothing",
                        "year.csv line 12: air_c \"NaN\", expected a number with a decimal point or nothing",
                        "year.csv line 13: 4 cells, expected 5 as in the line of column names",
                        "year.csv line 14: air_c \"0x1p3\", expected a number with a decimal point or nothing",
                        "year.csv line 14: wind_m_s \"3d\", expected a number with a decimal point or nothing"),
                faults(text));
    }

    @Test
    void stopsAfterTwentyFaults() {
        List<String> faults = faults(Text.hours("air_c,global_w_m2", 100, i -> "99,0"));
        assertEquals(21, faults.size());
        assertEquals("year.csv: more faults may follow; reading stopped after 20", faults.get(20));
    }

    @Test
    void timesMustBeReadableAndInOrder() {
        String good = day("air_c,global_w_m2", "1,0");
        assertEquals(
                List.of(
                        "year.csv line 10: time \"01/01/2025 02:00\", expected a date and time like 2025-01-31T14:00 (local"
                                + " standard time)"),
                faults(Text.withLine(good, 10, "01/01/2025 02:00,1,0")));
        assertEquals(
                List.of("year.csv line 10: time 2025-01-01T01:00 does not follow the row before, expected an hour after"
                        + " 2025-01-01T01:00 (twice the same; daylight saving? times are standard time all year)"),
                faults(Text.withLine(good, 10, "2025-01-01T01:00,1,0")));
        assertEquals(
                List.of(
                        "year.csv line 10: time 2025-01-01T02:20 is not on the hour of the rows before, expected an hour"
                                + " after 2025-01-01T01:00",
                        "year.csv line 11: time 2025-01-01T03:00 is not on the hour of the rows before, expected an hour"
                                + " after 2025-01-01T02:20"),
                faults(Text.withLine(good, 10, "2025-01-01T02:20,1,0")));
        assertEquals(
                List.of(
                        "year.csv line 10: time \"2025-02-30T02:00\", expected a date and time like 2025-01-31T14:00 (local"
                                + " standard time)"),
                faults(Text.withLine(good, 10, "2025-02-30T02:00,1,0")));
    }

    @Test
    void brokenQuotesAreNamed() {
        List<String> faults = faults(Text.withLine(day("air_c,global_w_m2", "1,0"), 12, "2025-01-01T04:00,\"1,0"));
        assertEquals(List.of("year.csv line 12: quotation marks do not match from here on"), faults);
    }

    @Test
    void aHeaderAloneIsRefused() {
        assertEquals(List.of("year.csv line 8: the file ends, expected a line of column names"), faults(Text.HEADER));
        assertEquals(List.of("year.csv: has no rows of weather"), faults(Text.HEADER + "time,air_c,global_w_m2\n"));
    }

    @Test
    void columnsThatNeverHoldAValueCountAsAbsent() throws WeatherRefused {
        assertEquals(
                3, read(day("air_c,global_w_m2,wind_m_s", "1,0,")).windMPerS().at(0));
        assertEquals(
                List.of(
                        "year.csv: the column of air temperature holds no value",
                        "year.csv: the columns of irradiance hold no values, expected global_w_m2 or two of global_w_m2,"
                                + " beam_w_m2 and diffuse_w_m2"),
                faults(day("air_c,global_w_m2", ",")));
    }
}
