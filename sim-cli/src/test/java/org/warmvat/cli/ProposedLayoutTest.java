package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;
import org.warmvat.weather.file.WeatherFiles;

/** A proposed layout, the site filled in and nothing else, reads the weather that the text was made of, whatever its units and dates. */
class ProposedLayoutTest {
    private static final Weather YEAR = WeatherFiles.demonstration();
    private static final int HOURS = 24 * 20;

    @TempDir
    Path folder;

    private static double air(int minute) {
        return YEAR.airC().at(60.0 * minute);
    }

    /** One text: its headings, how dates read, how many minutes a row lasts, and what stands in a row for air, wind and sun. */
    private record Kind(String head, String date, int step, char delimiter, Row row) {}

    /** The cells of a row by air in degrees, wind in m/s and mean irradiance. */
    private interface Row {
        double[] cells(double airC, double windMPerS, double globalWPerM2);
    }

    private static Kind kind(String name) {
        return switch (name) {
            case "american" ->
                new Kind("Date,Temp (F),Wind (mph),Solar Rad (W/m2)", "M/d/yyyy H:mm", 60, ',', (air, wind, sun) ->
                        new double[] {32 + 1.8 * air, wind / 0.44704, sun});
            case "british" ->
                new Kind(
                        "Date;Air temperature [°C];Wind speed [kt];GHI [kJ/m²]",
                        "dd/MM/yyyy HH:mm",
                        60,
                        ';',
                        (air, wind, sun) -> new double[] {air, wind / 0.514444, 3.6 * sun});
            case "model" ->
                new Kind(
                        "time,t2m (K),wind speed (m/s),ssrd (J/m2)",
                        "yyyy-MM-dd'T'HH:mm:ss'Z'",
                        60,
                        ',',
                        (air, wind, sun) -> new double[] {air + 273.15, wind, 3600 * sun});
            case "quarters" ->
                new Kind("Time\tTemperature\tWind km/h\tGlobal J/cm2", "yyyy-MM-dd HH:mm", 15, '\t', (air, wind, sun) ->
                        new double[] {air, 3.6 * wind, 0.09 * sun});
            case "zoned" ->
                new Kind("time,temp,wind,ghi", "yyyy-MM-dd'T'HH:mm'+00:00'", 60, ',', (air, wind, sun) ->
                        new double[] {air, wind, sun});
            default ->
                new Kind("Date,Temp,Wind,Global\n,degC,km/h,kW/m2", "yyyy/MM/dd HH:mm", 60, ',', (air, wind, sun) ->
                        new double[] {air, 3.6 * wind, sun / 1000});
        };
    }

    private static String text(Kind kind) {
        StringBuilder text = new StringBuilder(kind.head()).append('\n');
        DateTimeFormatter form = DateTimeFormatter.ofPattern(kind.date(), Locale.ROOT);
        for (int minute = kind.step(); minute <= 60 * HOURS; minute += kind.step()) {
            LocalDateTime end = YEAR.start().plusMinutes(minute);
            double[] cells = kind.row()
                    .cells(air(minute), YEAR.windMPerS().at(60.0 * minute), YEAR.globalWPerM2((minute - 1) / 60));
            text.append(form.format(end));
            for (double cell : cells) {
                text.append(kind.delimiter()).append(String.format(Locale.ROOT, "%.4f", cell));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String filledIn(String proposal) {
        return proposal.replace("name:   # fill in: what to call it", "name: Here")
                .replaceAll("latitude_deg: .*", "latitude_deg: " + YEAR.site().latitudeDeg())
                .replaceAll("longitude_deg: .*", "longitude_deg: " + YEAR.site().longitudeDeg())
                .replaceAll("elevation_m: .*", "elevation_m: " + YEAR.site().elevationM())
                .replaceAll("utc_offset_h: .*", "utc_offset_h: 0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"american", "british", "model", "quarters", "zoned", "units in a line"})
    void readsWhatTheTextWasMadeOf(String name) throws IOException {
        Path file = folder.resolve("hours.txt");
        Files.writeString(file, text(kind(name)), StandardCharsets.UTF_8);
        Program layout = new Program();
        assertEquals(0, layout.run("weather", "layout", file.toString()), layout.err());
        Path filled = folder.resolve("layout.yaml");
        Files.writeString(filled, filledIn(layout.out()));
        Path out = folder.resolve("out.csv");
        Program convert = new Program();
        assertEquals(
                0,
                convert.run(
                        "weather", "convert", file.toString(), "--layout", filled.toString(), "--out", out.toString()),
                convert.err());
        Weather read = assertReadable(out);
        for (int hour = 1; hour < HOURS - 1; hour += 7) {
            assertEquals(YEAR.globalWPerM2(hour), read.globalWPerM2(hour), 0.2, name + " sun of hour " + hour);
            double s = 3600.0 * hour + read.stamp().secondsIntoHour();
            assertEquals(
                    YEAR.airC().at(s), read.airC().at(s), name.equals("quarters") ? 0.3 : 0.002, name + " " + hour);
            assertTrue(read.table().columns().containsKey(Quantity.WIND), name);
            assertEquals(YEAR.windMPerS().at(s), read.windMPerS().at(s), name.equals("quarters") ? 0.9 : 0.002, name);
        }
    }

    private static Weather assertReadable(Path file) throws IOException {
        try {
            Weather read = WeatherFiles.read(file);
            assertEquals(YEAR.start(), read.start());
            return read;
        } catch (org.warmvat.weather.WeatherRefused refused) {
            throw new AssertionError(refused);
        }
    }

    /** The layout that is written for a known file reads it to the same hours. */
    @Test
    void theLayoutOfAKnownFileReadsTheSame() throws IOException {
        StringBuilder text = new StringBuilder("""
                -BEGIN HEADER-
                NASA/POWER Source Native Resolution Hourly Data
                Dates (month/day/year): 01/01/2025 through 01/20/2025 in UTC
                Location: latitude  53.1   longitude -20.4
                elevation from MERRA-2: Average for 0.5 x 0.625 degree lat/lon region = 120.5 meters
                ALLSKY_SFC_SW_DWN     CERES SYN1deg All Sky Surface Shortwave Downward Irradiance (MJ/hr)
                -END HEADER-
                YEAR,MO,DY,HR,T2M,RH2M,PS,ALLSKY_SFC_SW_DWN
                """);
        for (int hour = 0; hour < HOURS; hour++) {
            LocalDateTime time = YEAR.start().plusHours(hour);
            text.append(String.format(
                    Locale.ROOT,
                    "%d,%d,%d,%d,%.2f,81.5,100.2,%.4f%n",
                    time.getYear(),
                    time.getMonthValue(),
                    time.getDayOfMonth(),
                    time.getHour(),
                    air(60 * hour),
                    0.0036 * YEAR.globalWPerM2(hour)));
        }
        String file = Files.writeString(folder.resolve("hours.csv"), text).toString();
        Program layout = new Program();
        assertEquals(0, layout.run("weather", "layout", file), layout.err());
        String written =
                Files.writeString(folder.resolve("layout.yaml"), layout.out()).toString();
        assertTrue(layout.out().contains("global_w_m2: {column: \"ALLSKY_SFC_SW_DWN\", unit: mj/m2}"), layout.out());
        Program known = new Program();
        assertEquals(0, known.run("weather", "convert", file), known.err());
        Program described = new Program();
        assertEquals(0, described.run("weather", "convert", file, "--layout", written), described.err());
        assertEquals(
                known.out().lines().filter(line -> !line.startsWith("# note")).toList(),
                described
                        .out()
                        .lines()
                        .filter(line -> !line.startsWith("# note"))
                        .toList());
    }

    /** Days above twelve tell days from months; where neither the rows nor their order do, it is asked. */
    @Test
    void daysAreToldFromMonths() throws IOException {
        Path file = folder.resolve("hours.csv");
        Files.writeString(file, text(kind("british")), StandardCharsets.UTF_8);
        Program told = new Program();
        told.run("weather", "layout", file.toString());
        assertTrue(told.out().contains("form: \"DD/MM/YYYY hh:mm\""), told.out());
        assertTrue(!told.out().contains("month or day first"), told.out());
        Files.writeString(file, text(kind("british")).lines().limit(20).reduce("", (a, b) -> a + b + "\n"));
        Program asked = new Program();
        asked.run("weather", "layout", file.toString());
        assertTrue(asked.out().contains("month or day first? Both would read."), asked.out());
    }

    /** A form of time that no row has is told of the first two, not of twenty. */
    @Test
    void aFormThatNoRowHasIsToldOnce() throws IOException {
        Path file = folder.resolve("hours.csv");
        Files.writeString(file, text(kind("zoned")));
        Path layout = folder.resolve("layout.yaml");
        Program proposal = new Program();
        proposal.run("weather", "layout", file.toString());
        Files.writeString(layout, filledIn(proposal.out()).replace("hh:mm+00:00", "hh:mm"));
        Program refused = new Program();
        assertEquals(3, refused.run("weather", "convert", file.toString(), "--layout", layout.toString()));
        assertEquals(2, refused.err().strip().lines().count(), refused.err());
        assertTrue(
                refused.err()
                        .contains(
                                "hours.csv line 3: time \"2025-01-01T02:00+00:00\", expected the form YYYY-MM-DDThh:mm, which no row"
                                        + " has so far; a layout says another, \"warmvat weather layout FILE\" proposes one"),
                refused.err());
    }
}
