package org.warmvat.cli.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.Warmvat;
import picocli.CommandLine;

/** The commands about weather, through the command line. */
class WeatherCommandTest {

    private static final Path SAMPLES = Path.of("..", "weather-samples");
    private static final Path EXAMPLES = Path.of("..", "docs", "examples");

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(Object... args) {
        CommandLine line = Warmvat.commandLine();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        String[] words = new String[args.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = args[i].toString();
        }
        return line.execute(words);
    }

    @Test
    void makeRemakesASample() throws IOException {
        Path made = folder.resolve("made.csv");
        Path normals = SAMPLES.resolve("cool-southern-normals.csv");
        assertEquals(0, run("weather", "make", normals, "--out", made));
        assertEquals(Files.readString(SAMPLES.resolve("cool-southern.csv")), Files.readString(made));
        assertEquals("", err.toString());
        assertEquals(2, run("weather", "make", normals, "--out", made));
        assertTrue(err.toString().contains("stands there already, expected --replace or another name"), err.toString());
        assertEquals(0, run("weather", "make", normals, "--seed", "5", "--out", made, "--replace"));
        assertTrue(Files.readString(made).contains("with seed 5;"));
    }

    @Test
    void makeRefusesInWords() throws IOException {
        Path bright = folder.resolve("bright.csv");
        String normals = Files.readString(SAMPLES.resolve("cool-southern-normals.csv"));
        Files.writeString(bright, normals.replace("\n6,7.2,7.4,1.05,", "\n6,7.2,7.4,6,"));
        assertEquals(3, run("weather", "make", bright));
        assertTrue(
                err.toString().startsWith("bright.csv: month 6: global_kwh_m2_day 6.00, expected at most "),
                err.toString());
        assertEquals("", out.toString());
        assertEquals(3, run("weather", "make", folder.resolve("none.csv")));
        assertTrue(err.toString().contains("none.csv: no such file"), err.toString());
    }

    @Test
    void makeRefusesSeedsAndPlacesThatAreNone() {
        Path normals = SAMPLES.resolve("cool-southern-normals.csv");
        assertEquals(2, run("weather", "make", normals, "--seed", "-3"));
        assertTrue(err.toString().contains("--seed -3, expected a whole number from 0 to 1000000000"), err.toString());
        assertEquals(2, run("weather", "make", normals, "--seed", "1000000001"));
        Path nowhere = folder.resolve("none").resolve("made.csv");
        assertEquals(2, run("weather", "make", normals, "--out", nowhere));
        assertTrue(
                err.toString().contains(nowhere + ": there is no folder " + nowhere.getParent() + " to write it to"),
                err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void lookTellsMonthsAndNothingSuspicious() {
        assertEquals(0, run("weather", "look"));
        List<String> lines = out.toString().lines().toList();
        assertEquals("Thornacre (invented): what the weather file holds", lines.get(0));
        assertTrue(
                out.toString().contains("No weather was given: this is the built-in demonstration, an invented year."));
        assertTrue(out.toString().contains("Latitude 53.10, longitude -2.40, 120 m above the sea, UTC+0; "));
        assertEquals(
                12,
                lines.stream().filter(line -> line.matches("  2025-\\d\\d  .*")).count());
        assertTrue(lines.contains("  Nothing in the file is suspicious."), out.toString());
    }

    @Test
    void lookAsJsonAndAsAPicture() throws IOException {
        Path svg = folder.resolve("look.svg");
        Path png = folder.resolve("look.png");
        assertEquals(0, run("weather", "look", SAMPLES.resolve("cold-continental.csv"), "--json", "--picture", svg));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals(8760, json.path("hours").asInt());
        assertEquals(12, json.path("months").size());
        assertEquals(0, json.path("suspicions").size());
        assertTrue(Files.readString(svg).contains("Brannik Steppe (invented)"));
        assertEquals(0, run("weather", "look", "--picture", png));
        assertEquals((byte) 'P', Files.readAllBytes(png)[1]);
        assertEquals(2, run("weather", "look", "--picture", folder.resolve("look.gif")));
        assertEquals(2, run("weather", "look", "--picture", png));
        assertTrue(err.toString().contains("look.png: stands there already, expected --replace"), err.toString());
        assertEquals(0, run("weather", "look", "--picture", png, "--replace"));
    }

    @Test
    void lookNamesWhatIsSuspicious() throws IOException {
        Path wrong = folder.resolve("wrong.csv");
        String text = Files.readString(SAMPLES.resolve("cool-maritime-hills.csv"));
        Files.writeString(wrong, text.replace("stamp: hour_end", "stamp: hour_start"));
        assertEquals(0, run("weather", "look", wrong));
        assertTrue(out.toString().contains("with the times moved by -1.0 h"), out.toString());
    }

    @Test
    void theExamplesOfTheDocumentationConvert() throws IOException {
        convert("service.csv", "service-layout.yaml", """
                # warmvat weather 1
                # site: Moorbach (invented)
                # latitude_deg: 52.4
                # longitude_deg: 9.7
                # elevation_m: 55
                # utc_offset_h: 1
                # stamp: hour_end
                # origin: converted from service.csv
                # note: 1 missing values of air_c were filled by straight lines; the longest gap was 1 h.
                time,air_c,relative_humidity,wind_m_s,global_w_m2
                2025-06-01T10:00,17.4,0.62,3.1,560
                2025-06-01T11:00,18.3,0.58,3.4,660
                2025-06-01T12:00,19.1,0.55,3.6,700
                2025-06-01T13:00,19.9,0.52,3.3,720
                """);
        convert("satellite.csv", "satellite-layout.yaml", """
                # warmvat weather 1
                # site: Alto Cenizal (invented)
                # latitude_deg: 40.2
                # longitude_deg: -106.4
                # elevation_m: 1950
                # utc_offset_h: -7
                # stamp: hour_middle
                # origin: converted from satellite.csv
                time,air_c,wind_m_s,global_w_m2,beam_w_m2,diffuse_w_m2
                2025-06-01T10:30,15,2.5,846.7,802,112
                2025-06-01T11:30,16.5,3,923.9,836,118
                2025-06-01T12:30,17.8,3.5,934.9,837,120
                """);
        convert("fixed.txt", "fixed-layout.yaml", """
                # warmvat weather 1
                # site: Harrow Inlet (invented)
                # latitude_deg: -42.4
                # longitude_deg: 171.2
                # elevation_m: 60
                # utc_offset_h: 12
                # stamp: hour_end
                # origin: converted from fixed.txt
                # note: The weather is a typical year whose months come from different years: it was laid onto 2025.
                # note: 1 missing values of dew_point_c were filled by straight lines; the longest gap was 1 h.
                time,air_c,dew_point_c,pressure_hpa,global_w_m2,cloud_fraction
                2025-01-31T23:00,15.1,11.8,1008.2,0,0.75
                2025-02-01T00:00,14.8,11.7,1008,0,0.875
                2025-02-01T01:00,13.9,10.9,1012.1,0,0.5
                2025-02-01T02:00,13.6,10.1,1012.2,0,0.375
                """);
    }

    private void convert(String text, String layout, String expected) throws IOException {
        Path converted = folder.resolve(text + ".converted");
        assertEquals(
                0,
                run(
                        "weather",
                        "convert",
                        EXAMPLES.resolve(text),
                        "--layout",
                        EXAMPLES.resolve(layout),
                        "--out",
                        converted),
                err.toString());
        assertEquals(expected, Files.readString(converted));
    }

    @Test
    void aConvertedFileIsReadBack() throws IOException {
        Path twice = folder.resolve("twice.csv");
        Path sample = SAMPLES.resolve("sunny-high-valley.csv");
        assertEquals(0, run("weather", "convert", sample, "--out", twice));
        assertEquals(rows(Files.readString(sample)), rows(Files.readString(twice)));
        assertFalse(Files.exists(folder.resolve("twice.csv.part")));
    }

    private static List<String> rows(String text) {
        return text.lines().filter(line -> !line.startsWith("#")).toList();
    }

    @Test
    void aLayoutNeedsItsWeather() {
        assertEquals(3, run("weather", "look", "--layout", EXAMPLES.resolve("fixed-layout.yaml")));
        assertTrue(err.toString().contains("a layout was given but no weather file"), err.toString());
    }

    @Test
    void manyYearsAreMadeAndSayHowTheySpread() throws IOException {
        Path made = folder.resolve("years.csv");
        Path normals = SAMPLES.resolve("cool-southern-normals.csv");
        assertEquals(0, run("weather", "make", normals, "--years", "2", "--out", made));
        assertTrue(
                err.toString().startsWith("Made 2 synthetic years, made from monthly normals with seeds 1 to 2;"),
                err.toString());
        List<String> lines = Files.readAllLines(made);
        assertTrue(lines.get(7).contains("common practice, no source"), lines.get(7));
        assertTrue(lines.get(lines.size() - 1).startsWith("2027-01-01T00:00,"), lines.get(lines.size() - 1));
        assertEquals(2, run("weather", "make", normals, "--years", "2", "--seed", "3"));
        assertEquals(2, run("weather", "make", normals, "--years", "101"));
    }

    @Test
    void convertPutsStampAndClockRight() throws IOException {
        Path wrong = folder.resolve("wrong.csv");
        String sample = Files.readString(SAMPLES.resolve("cool-maritime-hills.csv"));
        Files.writeString(wrong, sample.replace("# stamp: hour_end", "# stamp: hour_start"));
        assertEquals(0, run("weather", "look", wrong));
        assertTrue(out.toString().contains("\"weather convert FILE --stamp hour_end\""), out.toString());
        Path right = folder.resolve("right.csv");
        assertEquals(0, run("weather", "convert", wrong, "--stamp", "hour_end", "--out", right));
        assertEquals(hourRows(sample), hourRows(Files.readString(right)));
        assertTrue(err.toString().contains("The sun confirms the times (a stamp at the hour's end"), err.toString());
        assertEquals(0, run("weather", "convert", wrong, "--utc-offset", "2", "--out", right, "--replace"));
        assertTrue(Files.readString(right).contains("# utc_offset_h: 2\n"));
        assertEquals(2, run("weather", "convert", wrong, "--utc-offset", "20"));
        assertEquals(2, run("weather", "convert", wrong, "--stamp", "noon"));
        assertTrue(
                err.toString().contains("\"noon\", expected one of hour_start, hour_middle, hour_end"), err.toString());
    }

    private static List<String> hourRows(String file) {
        return file.lines().filter(line -> line.startsWith("20")).toList();
    }

    @Test
    void holesAreFilledWhereverWeatherIsRead() throws IOException {
        Path holed = folder.resolve("holed.csv");
        List<String> lines = Files.readAllLines(SAMPLES.resolve("cool-maritime-hills.csv"));
        lines.subList(1000, 1030).clear();
        Files.write(holed, lines);
        assertEquals(3, run("weather", "look", holed));
        assertTrue(err.toString().contains("more by --fill-holes HOURS"), err.toString());
        assertEquals(0, run("weather", "look", holed, "--fill-holes", "30"));
        assertTrue(out.toString()
                .contains("30 missing values of air_c were filled from the same hours of the days before and after"));
        assertEquals(0, run("check", SAMPLES.resolve("../docs/examples/smallest.yaml"), holed, "--fill-holes", "30"));
        assertEquals(2, run("weather", "look", holed, "--fill-holes", "-1"));
    }

    @Test
    void workbooksAreNamedAndToldHowToSave() throws IOException {
        Path workbook = folder.resolve("year.xlsx");
        Files.write(
                workbook, "PK\003\004....[Content_Types].xml".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        assertEquals(3, run("weather", "look", workbook));
        assertTrue(
                err.toString()
                        .contains(
                                "is a spreadsheet's workbook (.xlsx), expected text: open it in the spreadsheet program"),
                err.toString());
        Path open = folder.resolve("year.csv");
        Files.write(
                open,
                "PK\003\004..mimetypeapplication/vnd.oasis.opendocument.spreadsheet"
                        .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        assertEquals(3, run("weather", "look", open));
        assertTrue(err.toString().contains("(.ods)"), err.toString());
    }

    @Test
    void aLayoutIsProposedForASpreadsheetsTable() throws IOException {
        Path table = folder.resolve("station.csv");
        StringBuilder text = new StringBuilder(
                "Station Moorbach\nDatum;Uhrzeit;Außentemperatur (°C);Wind (km/h);Globalstrahlung (W/m2);Luftdruck (hPa)\n");
        for (int hour = 0; hour < 48; hour++) {
            text.append(String.format(
                    java.util.Locale.ROOT, "%02d.03.2024;%d:00;4,5;7,2;%d;1001,5\n", 14 + hour / 24, hour % 24, hour));
        }
        Files.write(table, text.toString().getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        assertEquals(3, run("weather", "look", table));
        assertTrue(
                err.toString()
                        .contains(
                                "saved by a spreadsheet, it seems: semicolons between the cells, decimal commas, dates like"),
                err.toString());
        assertEquals(0, run("weather", "layout", table));
        String proposed = out.toString();
        assertTrue(proposed.contains("  encoding: latin-1\n"), proposed);
        assertTrue(proposed.contains("  form: \"DD.MM.YYYY hh:mm\"\n"), proposed);
        assertTrue(proposed.contains("  air_c: \"Außentemperatur (°C)\"\n"), proposed);
        assertTrue(proposed.contains("  wind_m_s: {column: \"Wind (km/h)\", unit: km/h}\n"), proposed);
        assertTrue(proposed.contains("  latitude_deg:   # fill in: north positive\n"), proposed);
        Files.writeString(table, "nothing,like\nrows\n");
        assertEquals(3, run("weather", "layout", table));
    }

    @Test
    void whichOfThem() {
        assertEquals(2, run("weather"));
        assertTrue(err.toString().startsWith("Say which: look, make, convert or layout."), err.toString());
    }
}
