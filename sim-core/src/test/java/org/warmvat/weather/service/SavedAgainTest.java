package org.warmvat.weather.service;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.weather.Quantity;
import org.warmvat.weather.Weather;
import org.warmvat.weather.WeatherRefused;
import org.warmvat.weather.doubt.Doubt;
import org.warmvat.weather.doubt.Doubts;
import org.warmvat.weather.file.Reading;
import org.warmvat.weather.file.WeatherFiles;

/** Files of services after spreadsheets, browsers and older machines have had them: read to the same hours as before. */
class SavedAgainTest {
    private static ServiceTexts texts;

    @BeforeAll
    static void read() throws WeatherRefused, IOException {
        texts = new ServiceTexts(WeatherFiles.read(Path.of("..", "weather-samples", "cold-continental.csv")));
    }

    private static Weather parse(String text) throws WeatherRefused {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Weather read(byte[] bytes) throws WeatherRefused {
        return WeatherFiles.read("download.csv", bytes);
    }

    /** As a spreadsheet saves it: every line filled up to the widest, cells parted and numbers written as its settings have it. */
    private static String saved(String text, char delimiter, char decimalMark) {
        List<String> lines = text.lines().toList();
        int most = lines.stream().mapToInt(SavedAgainTest::commas).max().orElseThrow();
        StringBuilder saved = new StringBuilder();
        for (String line : lines) {
            String filled = line.replace('\t', ',') + ",".repeat(most - commas(line));
            saved.append(
                            decimalMark == '.'
                                    ? filled.replace(',', delimiter)
                                    : filled.replace(',', delimiter).replaceAll("(?<=\\d)\\.(?=\\d)", ","))
                    .append("\r\n");
        }
        return saved + String.valueOf(delimiter).repeat(most) + "\r\n";
    }

    private static int commas(String line) {
        return (int) line.chars().filter(c -> c == ',').count();
    }

    private static void assertSame(Weather expected, Weather read) {
        assertEquals(expected.start(), read.start());
        assertEquals(expected.site().latitudeDeg(), read.site().latitudeDeg());
        assertEquals(expected.site().elevationM(), read.site().elevationM());
        assertEquals(expected.table().columns().keySet(), read.table().columns().keySet());
        for (Quantity quantity : expected.table().columns().keySet()) {
            assertArrayEquals(
                    expected.table().columns().get(quantity),
                    read.table().columns().get(quantity),
                    1e-9,
                    quantity.key());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tmy3", "pvgis typical", "pvgis hourly", "nsrdb", "power"})
    void aSpreadsheetOfAnySettingsLeavesTheHours(String kind) throws WeatherRefused {
        Supplier<String> text = switch (kind) {
            case "tmy3" -> () -> texts.tmy3(true);
            case "pvgis typical" -> texts::pvgisTypicalYear;
            case "pvgis hourly" -> () -> texts.pvgisHourly(0, true);
            case "nsrdb" -> () -> texts.nsrdb(30, 60);
            default -> () -> texts.nasaPower(true);
        };
        Weather expected = parse(text.get());
        assertSame(expected, parse(saved(text.get(), ',', '.')));
        assertSame(expected, parse(saved(text.get(), '\t', '.')));
        Weather german = parse(saved(text.get(), ';', ','));
        assertSame(expected, german);
        String told = german.assumptions().get(0);
        assertEquals(told.indexOf(", saved again by a spreadsheet:"), told.lastIndexOf(", saved again"), told);
        assertTrue(told.contains(", saved again by a spreadsheet:"), told);
    }

    @Test
    void lineEndsAndLettersOfOlderMachines() throws WeatherRefused {
        String text = texts.pvgisTypicalYear();
        Weather expected = parse(text);
        assertSame(expected, parse(text.replace("\r\n", "\r")));
        assertSame(expected, parse(text.replace("\r\n", "\n")));
        assertSame(expected, parse("\uFEFF" + text));
        byte[] latin1 = text.replace("(degree Celsius)", "(°C)").getBytes(StandardCharsets.ISO_8859_1);
        assertSame(expected, read(latin1));
    }

    /** Its layout, where one is asked for all the same, says that the letters are older. */
    @Test
    void theLayoutOfAKnownFileKeepsItsLetters() {
        String yaml = LayoutProposal.of(texts.pvgisTypicalYear(), true).orElseThrow();
        assertTrue(yaml.contains("\n  encoding: latin-1\n"), yaml);
    }

    @Test
    void aCommaInAQuotedNameOfTheSiteIsNoDelimiter() throws WeatherRefused {
        Weather read = parse(texts.tmy3(false).replace("\"INVENTED\"", "\"INVENTED, NORTH\""));
        assertEquals("INVENTED, NORTH ZZ", read.site().name());
        assertEquals(parse(texts.tmy3(false)).site().latitudeDeg(), read.site().latitudeDeg());
    }

    @ParameterizedTest
    @ValueSource(strings = {"$3-$1-$2,", "$2.$1.$3,", "$1/$2/95,"})
    void datesOfOtherSettings(String date) throws WeatherRefused {
        Weather read = parse(texts.tmy3(false).replaceAll("(?m)^(\\d\\d)/(\\d\\d)/(\\d{4}),", date));
        assertSame(parse(texts.tmy3(false)), read);
    }

    /** Of the service's units those for farmers, megajoules of the hour. */
    @Test
    void megajoulesOfNasaPower() throws WeatherRefused {
        StringBuilder text = new StringBuilder();
        for (String line : texts.nasaPower(false).split("\n")) {
            String[] cells = line.split(",");
            if (line.matches("\\d{4},.*")) {
                for (int i : List.of(4, 5, 6)) {
                    cells[i] = String.format(java.util.Locale.ROOT, "%.8f", 0.0036 * Double.parseDouble(cells[i]));
                }
            }
            text.append(String.join(",", cells)).append('\n');
        }
        Weather expected = parse(texts.nasaPower(false));
        Weather read = parse(text.toString().replace("(W/m^2)", "(MJ/hr)").replace("(Wh/m^2)", "(MJ/hr)"));
        assertEquals(expected.globalWPerM2(4000), read.globalWPerM2(4000), 0.01);
        assertEquals(List.of(), Doubts.of(read));
    }

    /** Some services leave 29 February out unless asked for it. */
    @Test
    void aLeapDayLeftOutIsNamedWithItsCure() throws WeatherRefused {
        String leap = texts.nsrdb(30, 100).replaceAll("(?m)^2025,", "2024,");
        WeatherRefused refused = assertThrows(WeatherRefused.class, () -> parse(leap));
        assertEquals(1, refused.faults().size());
        assertTrue(
                refused.getMessage()
                        .endsWith(
                                "comes after a gap of 24 hours, expected rows for every hour (29 February is left out: ask the"
                                        + " service for leap days, or fill it by --fill-holes 24)"),
                refused.getMessage());
        Weather filled = WeatherFiles.read(
                "download.csv",
                leap.getBytes(StandardCharsets.UTF_8),
                new Reading(Optional.empty(), 24, Reading.USUAL.beside()));
        assertEquals(2424, filled.hours());
    }

    @Test
    void anInstantThatIsNotStatedIsSaid() throws WeatherRefused {
        String told = parse(texts.pvgisTypicalYear(0).replaceAll("Irradiance Time Offset.*\r\n", ""))
                .assumptions()
                .get(0);
        assertTrue(told.contains("since the file has no line \"Irradiance Time Offset (h)\""), told);
    }

    /** What the file says of its plane is doubted for certain, however the light looks. */
    @Test
    void aPlaneThatTheFileStatesIsDoubted() throws WeatherRefused {
        List<Doubt> doubts = Doubts.of(parse(texts.pvgisHourly(35, true)));
        assertEquals(
                List.of(Doubt.Kind.TILTED), doubts.stream().map(Doubt::kind).toList());
        assertTrue(
                doubts.get(0).sentence().contains("on a plane of 35°")
                        && doubts.get(0).sentence().contains("Cure: ask the service for slope 0"),
                doubts.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u001F\u008B\b|packed by gzip",
                "%PDF-1.4|a PDF document",
                "\u0089PNG\r\n|a picture",
                " <!DOCTYPE html><html>|a web page",
                "{\"inputs\":{}}|JSON: ask the service for CSV"
            })
    void whatIsNoTableIsNamed(String headAndName) {
        String[] parts = headAndName.split("\\|");
        WeatherRefused refused = assertThrows(
                WeatherRefused.class, () -> read((parts[0] + "\u0000 and more").getBytes(StandardCharsets.ISO_8859_1)));
        assertEquals(1, refused.faults().size());
        assertTrue(refused.getMessage().startsWith("download.csv: is " + parts[1]), refused.getMessage());
    }

    /** The page lists the kinds that are read, and no other. */
    @Test
    void thePageListsTheKindsThatAreRead() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "weather-file.md"));
        String part =
                page.substring(page.indexOf("## Files of public services"), page.indexOf("## Any other hourly text"));
        List<String> listed = part.lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| file"))
                .map(line -> line.substring(2, line.indexOf(" |", 2)).replace(" (CSV)", ""))
                .toList();
        assertEquals(
                Recognised.known().stream().sorted().toList(),
                listed.stream().sorted().toList());
    }
}
