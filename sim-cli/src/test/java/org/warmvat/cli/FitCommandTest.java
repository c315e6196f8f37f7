package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Inputs;

/** {@code fit} as it is called: logs of a body of one temperature, odd ones among them, and what is said of each. */
class FitCommandTest {

    private static final LocalDateTime START = LocalDateTime.of(2025, 1, 3, 18, 0);
    private static final Path EXAMPLES = Path.of("..", "docs", "examples");

    @TempDir
    private Path folder;

    private final Program program = new Program();
    private Path design;

    @BeforeEach
    void write() throws IOException {
        design = Files.copy(EXAMPLES.resolve("smallest.yaml"), folder.resolve("tank.yaml"));
    }

    /** Rows every half hour: 3.4 W/K, 3.8 MJ/K, 300 W from hour 24 to 44 where it is heated, errors that remember. */
    private static List<String> rows(int hours, boolean heated, LocalDateTime start) {
        List<String> rows = new ArrayList<>();
        Random random = new Random(5);
        double slurryC = 36;
        double error = 0;
        for (int row = 0; row <= 2 * hours; row++) {
            double airC = airC(start.plusMinutes(30L * row));
            error = 0.9 * error + 0.01 * random.nextGaussian();
            double watts = heated && row > 48 && row <= 88 ? 300 : 0;
            rows.add(String.format(
                    Locale.ROOT, "%s,%.3f,%.2f,%.0f,0", start.plusMinutes(30L * row), slurryC + error, airC, watts));
            double next = heated && row >= 48 && row < 88 ? 300 : 0;
            slurryC += 1800 * (next - 3.4 * (slurryC - airC)) / 3.8e6;
        }
        return rows;
    }

    private static double airC(LocalDateTime time) {
        return 3 + 3 * Math.sin(2 * Math.PI * (time.getHour() * 60 + time.getMinute() - 540) / 1440.0);
    }

    private Path log(String name, List<String> rows) throws IOException {
        return log(name, "time,slurry_c,air_c,backup_electric_w,feed_kg", rows);
    }

    private Path log(String name, String heading, List<String> rows) throws IOException {
        return Files.writeString(folder.resolve(name), heading + "\n" + String.join("\n", rows) + "\n");
    }

    private JsonNode fit(Object... words) throws IOException {
        assertEquals(0, run(words), program.err());
        return new ObjectMapper().readTree(program.out());
    }

    private int run(Object... words) {
        List<String> args = new ArrayList<>(List.of("fit"));
        for (Object word : words) {
            args.add(word.toString());
        }
        args.addAll(List.of("--out", folder.resolve("out").toString(), "--replace", "--json", "--quiet"));
        return program.run(args.toArray(String[]::new));
    }

    /** What is said of inputs that are refused; nothing is written. */
    private List<String> refused(Object... words) {
        assertEquals(3, run(words), program.err());
        assertFalse(Files.exists(folder.resolve("out")));
        return program.err().lines().toList();
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static String but(JsonNode answer) {
        return answer.path("verdict").path("but").toString();
    }

    @Test
    void theKeysAreThoseThatArePromised() throws IOException {
        Path weather = Path.of("..", "weather-samples", "cool-maritime-hills.csv");
        JsonNode fit = fit(design, log("log.csv", rows(72, true, START)), "--weather", weather)
                .path("fit");
        assertEquals(
                List.of(
                        "factors",
                        "ua_w_k",
                        "time_constant_h",
                        "residual_sd_k",
                        "residual_lag1",
                        "readings",
                        "hours",
                        "told_apart",
                        "one_value_holds",
                        "hints",
                        "year"),
                keys(fit));
        assertEquals(List.of("envelope", "capacity"), keys(fit.path("factors")));
        assertEquals(
                List.of("value", "low", "high", "low_blocks", "high_blocks", "held"),
                keys(fit.path("factors").path("envelope")));
        List<String> drawn = List.of("drawn", "value", "low", "high", "low_blocks", "high_blocks");
        assertEquals(drawn, keys(fit.path("ua_w_k")));
        assertEquals(drawn, keys(fit.path("time_constant_h")));
        assertEquals(List.of("backup_bought_kwh", "net_energy_kwh"), keys(fit.path("year")));
        assertEquals(drawn.subList(0, 4), keys(fit.path("year").path("backup_bought_kwh")));
        // without gas nothing is said of net energy
        assertTrue(fit.path("year").path("net_energy_kwh").isNull());
        assertTrue(fit.path("told_apart").asBoolean());
        for (String figure : List.of("ua_w_k", "time_constant_h")) {
            JsonNode node = fit.path(figure);
            assertTrue(node.path("low").asDouble() < node.path("value").asDouble(), figure);
            assertTrue(node.path("value").asDouble() < node.path("high").asDouble(), figure);
        }
    }

    @Test
    void factorsThatCannotBeToldApartHaveNoIntervalAndNoDesignIsWritten() throws IOException {
        Path log = log("log.csv", rows(96, false, START));
        JsonNode fit = fit(design, log, "--factors", "envelope,capacity").path("fit");
        assertFalse(fit.path("told_apart").asBoolean());
        for (String factor : List.of("envelope", "capacity")) {
            assertTrue(fit.path("factors").path(factor).path("low").isNull(), factor);
            assertTrue(fit.path("factors").path(factor).path("high").isNull(), factor);
        }
        assertTrue(fit.path("ratio").path("low").asDouble()
                < fit.path("ratio").path("high").asDouble());
        assertFalse(Files.exists(folder.resolve("out/design_fitted.yaml")));
        JsonNode usual = fit(design, log).path("fit");
        assertTrue(usual.path("factors").path("capacity").path("held").asBoolean());
        assertTrue(Files.exists(folder.resolve("out/design_fitted.yaml")));
    }

    @Test
    void theDesignThatIsWrittenIsReadAndItsFactorsAreShown() throws IOException {
        JsonNode fit = fit(design, log("log.csv", rows(72, true, START))).path("fit");
        Path written = folder.resolve("out/design_fitted.yaml");
        double envelope = DesignDocument.read(written.toString(), Inputs.bytes(written))
                .design()
                .adjust()
                .envelope();
        assertEquals(fit.path("factors").path("envelope").path("value").asDouble(), envelope, 1e-3 * envelope);
        assertEquals(0, program.run("check", written.toString(), "--quiet"), program.err());
        assertTrue(program.out().contains("Factors of adjust multiply what is drawn: envelope 1."), program.out());
    }

    @Test
    void severalFilesInAnyOrderAreOneLog() throws IOException {
        List<String> rows = rows(72, true, START);
        Path first = log("a.csv", rows.subList(0, 60));
        Path second = log("b.csv", rows.subList(60, rows.size()));
        JsonNode whole = fit(design, log("log.csv", rows));
        JsonNode parts = fit(design, second, first);
        assertEquals(whole.path("fit"), parts.path("fit"));
        assertEquals(3, parts.path("inputs").size());
    }

    @Test
    void gapsAndMissingRowsWidenAndDoNotMislead() throws IOException {
        List<String> rows = rows(240, true, START);
        Random random = new Random(4);
        List<String> left = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            if ((row < 150 || row > 190) && random.nextDouble() > 0.05) {
                left.add(rows.get(row));
            }
        }
        JsonNode whole = fit(design, log("log.csv", rows)).path("fit").path("ua_w_k");
        JsonNode answer = fit(design, log("gaps.csv", left));
        JsonNode gaps = answer.path("fit").path("ua_w_k");
        assertTrue(
                answer.path("assumed").toString().contains("of more than three steps, the longest 2"),
                answer.path("assumed").toString());
        assertTrue(gaps.path("low").asDouble() < whole.path("value").asDouble());
        assertTrue(gaps.path("high").asDouble() > whole.path("value").asDouble());
    }

    /** Without weather the clock is free; with one, a head's offset moves the log onto the file's clock. */
    @Test
    void theClockIsThatOfTheHeadElseThatOfTheWeather() throws IOException {
        List<String> rows = rows(72, true, START);
        List<String> later = rows(72, true, START).stream()
                .map(row -> LocalDateTime.parse(row.substring(0, 16)).plusHours(2) + row.substring(16))
                .toList();
        String head = "# warmvat log 1\n# utc_offset_h: 2\ntime,slurry_c,air_c,backup_electric_w,feed_kg";
        Path bare = log("bare.csv", rows);
        Path headed = log("headed.csv", head, later);
        // feeding times lie otherwise in the day, which moves the steps and so the last digits
        assertEquals(uaWPerK(fit(design, bare)), uaWPerK(fit(design, headed)), 1e-3);
        Path weather = Files.writeString(folder.resolve("weather.csv"), YearCommandTest.weatherText(24 * 12));
        assertEquals(
                uaWPerK(fit(design, bare, "--weather", weather)),
                uaWPerK(fit(design, headed, "--weather", weather)),
                1e-3);
        assertEquals(
                List.of(
                        "headed.csv: utc_offset_h is stated in one of bare.csv and headed.csv only, expected in both or in none"),
                refusedAfterwards(bare, headed));
    }

    private static double uaWPerK(JsonNode answer) {
        return answer.path("fit").path("ua_w_k").path("value").asDouble();
    }

    private List<String> refusedAfterwards(Path one, Path other) throws IOException {
        assertEquals(3, run(design, one, other), program.err());
        return program.err()
                .replace(folder + java.io.File.separator, "")
                .lines()
                .toList();
    }

    @Test
    void aClockThatRunsBesideTheWeathersIsTold() throws IOException {
        StringBuilder weather = new StringBuilder(YearCommandTest.weatherText(0));
        LocalDateTime first = LocalDateTime.of(2025, 1, 1, 0, 0);
        for (int hour = 1; hour <= 24 * 12; hour++) {
            weather.append(
                    String.format(Locale.ROOT, "%s,%.2f,0\n", first.plusHours(hour), airC(first.plusHours(hour))));
        }
        Path file = Files.writeString(folder.resolve("weather.csv"), weather);
        assertEquals(
                -1,
                but(fit(design, log("right.csv", rows(120, true, START)), "--weather", file))
                        .indexOf("clock"));
        List<String> slow = rows(120, true, START).stream()
                .map(row -> LocalDateTime.parse(row.substring(0, 16)).minusHours(2) + row.substring(16))
                .toList();
        String but = but(fit(design, log("slow.csv", slow), "--weather", file));
        assertTrue(but.matches(".*By its air the log's clock is 1[12][0-9] minutes behind the weather file's.*"), but);
        assertTrue(but.contains("one of the two is set wrong"), but);
    }

    @Test
    void degreesFahrenheitAreSuspected() throws IOException {
        List<String> rows = rows(72, true, START).stream()
                .map(row -> row.split(","))
                .map(cells -> String.format(
                        Locale.ROOT,
                        "%s,%.2f,%.2f,%s,%s",
                        cells[0],
                        32 + 1.8 * Double.parseDouble(cells[1]),
                        32 + 1.8 * Double.parseDouble(cells[2]),
                        cells[3],
                        cells[4]))
                .toList();
        String but = but(fit(design, log("f.csv", rows)));
        assertTrue(but.contains("slurry and air look like degrees Fahrenheit"), but);
        assertFalse(but(fit(design, log("c.csv", rows(72, true, START)))).contains("Fahrenheit"));
    }

    @Test
    void aLoggersTextIsReadByItsLayoutAndOneSensorMayBeNamed() throws IOException {
        Path text = EXAMPLES.resolve("log.txt");
        Path layout = EXAMPLES.resolve("log-layout.yaml");
        JsonNode both = fit(design, text, "--log-layout", layout);
        assertTrue(both.path("assumed").toString().contains("the mean of the sensors low, top"), both.toString());
        JsonNode low = fit(design, text, "--log-layout", layout, "--sensor", "low");
        assertFalse(low.path("assumed").toString().contains("the mean of"));
        // row 12 has neither sensor; rows 11 and 50 lack the upper one
        assertEquals(70, both.path("fit").path("readings").asInt());
        assertEquals(72, low.path("fit").path("readings").asInt());
        StringBuilder own =
                new StringBuilder("# warmvat log 1\n# utc_offset_h: 1\ntime,slurry_c,air_c,backup_electric_w\n");
        Files.readString(text, StandardCharsets.ISO_8859_1)
                .lines()
                .skip(2)
                .map(line -> line.replace(',', '.').split(";"))
                .forEach(cells -> own.append(String.format(
                        Locale.ROOT,
                        "%s-%s-%sT%s,%s,%s,%.0f%n",
                        cells[0].substring(6, 10),
                        cells[0].substring(3, 5),
                        cells[0].substring(0, 2),
                        cells[0].substring(11),
                        cells[1].equals("Fehler") ? "" : (Double.parseDouble(cells[1]) - 32) / 1.8,
                        cells[3],
                        1000 * Double.parseDouble(cells[4]))));
        Path plain = Files.writeString(folder.resolve("own.csv"), own);
        assertEquals(uaWPerK(low), uaWPerK(fit(design, plain)), 1e-4);
    }

    @Test
    void holesOfTheWeatherAreFilledOnRequest() throws IOException {
        List<String> rows = rows(96, true, START).stream()
                .map(row -> row.split(","))
                .map(cells -> cells[0] + "," + cells[1] + "," + cells[3] + ",0")
                .toList();
        Path log = log("log.csv", "time,slurry_c,backup_electric_w,feed_kg", rows);
        String whole = YearCommandTest.weatherText(24 * 12);
        StringBuilder holed = new StringBuilder();
        whole.lines()
                .filter(line -> !line.matches("2025-01-05T(0[89]|1[0-7]):00.*"))
                .forEach(line -> holed.append(line).append('\n'));
        Path weather = Files.writeString(folder.resolve("weather.csv"), holed);
        String said = String.join("\n", refused(design, log, "--weather", weather));
        assertTrue(said.contains("--fill-holes"), said);
        JsonNode filled = fit(design, log, "--weather", weather, "--fill-holes", "12");
        assertTrue(
                filled.path("assumed").toString().contains("10 missing values of air_c were filled"),
                filled.path("assumed").toString());
    }

    @Test
    void logsThatCannotTellAreRefusedWithWhatTheyWouldNeed() throws IOException {
        Path day = log("day.csv", rows(20, false, START));
        assertEquals(
                List.of(
                        "the log is too short: 41 readings over 20.0 h, expected at least 12 over 27 h (a twentieth of the time"
                                + " constant of 535 h as drawn, and 3 h); let the tank cool for longer, better for several days"),
                refused(design, day));
        List<String> flat = rows(72, false, START).stream()
                .map(row -> row.substring(0, 16) + ",5.0,4.5,0,0")
                .toList();
        List<String> said = refused(design, log("flat.csv", flat));
        assertEquals(2, said.size(), said.toString());
        assertTrue(
                said.get(0).startsWith("the log is flat: the slurry moves by 0.00 K, expected 0.2 K or more"),
                said.get(0));
        assertTrue(said.get(1).startsWith("the slurry is as warm as its surroundings (0.5 K apart"), said.get(1));
        Path airless = log(
                "airless.csv",
                "time,slurry_c",
                rows(72, false, START).stream().map(row -> row.substring(0, 23)).toList());
        assertEquals(
                List.of("nothing tells the air around the tank, expected a column air_c in the log or --weather"),
                refused(design, airless));
    }

    @Test
    void whatIsLeftOutOfALogIsSaidWhereTooLittleIsLeft() throws IOException {
        assertEquals(
                List.of("the log is too short: 1 reading over 0.0 h, expected at least 12 over 3 h and more"),
                refused(design, log("one.csv", rows(72, true, START).subList(0, 1))));
        List<String> blank = rows(72, true, START).stream()
                .map(row -> row.endsWith(",0,0") ? row.substring(0, row.length() - 3) + ",0" : row)
                .toList();
        List<String> said = refused(design, log("blank.csv", blank));
        assertEquals(1, said.size(), said.toString());
        assertTrue(
                said.get(0)
                        .endsWith(
                                "; 52.0 h of the log are left out, where rows are missing or a heat has no value: write 0"
                                        + " where nothing went in"),
                said.get(0));
    }

    @Test
    void faultsOfAllFilesAreToldAtOnce() throws IOException {
        Path layout = Files.writeString(
                folder.resolve("layout.yaml"),
                "text: {delimiter: \"::\"}\ntime: {columns: Zeit, form: DD.MM}\ncolumns: {slurry_c: {column: 2, unit: x}, air: 3}\n");
        assertEquals(
                List.of(
                        "layout.yaml line 1: text.delimiter \"::\"",
                        "layout.yaml line 2: time.form \"DD.MM\"",
                        "layout.yaml line 3: columns.slurry_c.unit \"x\"",
                        "layout.yaml line 3: columns.air is not a known key",
                        "a.csv: no such file",
                        "b.csv: no such file",
                        "c.csv: no such file"),
                refused(design, "a.csv", "b.csv", "--log-layout", layout, "--weather", "c.csv").stream()
                        .map(line -> line.replace(folder + java.io.File.separator, "")
                                .replaceAll(", (expected|known).*", ""))
                        .toList());
    }

    @Test
    void textsThatAreNoLogsAreRefusedInOneLine() throws IOException {
        List<String> rows = rows(30, false, START);
        assertOneLine("is empty", Files.writeString(folder.resolve("log.csv"), ""));
        assertOneLine("no rows, expected readings of the slurry", log("log.csv", List.of()));
        assertOneLine(
                "line 1: a row of values, expected a line of column names before it, such as time,slurry_c,air_c",
                log("log.csv", rows.get(0), rows.subList(1, 9)));
        assertOneLine(
                "line 1: semicolons between the names, expected commas, and points in the numbers; any other text is read"
                        + " with --log-layout",
                log("log.csv", "time;slurry_c", rows));
        assertOneLine(
                "line 1: \"# warmvat weather 1\", expected \"# warmvat log 1\" or a line of column names; any other text is read"
                        + " with --log-layout",
                Files.writeString(folder.resolve("log.csv"), YearCommandTest.weatherText(3)));
        assertOneLine(
                "line 1: no column slurry_c (or slurry_NAME_c for several sensors), which is required; any other text is read"
                        + " with --log-layout",
                log(
                        "log.csv",
                        "time,air_c",
                        rows.stream().map(row -> row.substring(0, 19)).toList()));
        assertEquals(List.of("none.csv: no such file"), refused(design, "none.csv"));
        assertEquals(
                List.of("--sensor top: the log has no such sensor, expected one of slurry_c"),
                refused(design, log("log.csv", rows), "--sensor", "top"));
    }

    private void assertOneLine(String said, Path log) {
        List<String> lines = refused(design, log);
        assertEquals(List.of(log + (said.startsWith("line") ? " " : ": ") + said), lines);
    }

    @Test
    void aFactorThatIsNoneIsAWrongOption() throws IOException {
        assertEquals(2, run(design, log("log.csv", rows(30, false, START)), "--factors", "envelope,foam"));
        assertTrue(
                program.err()
                        .startsWith(
                                "--factors foam, expected envelope, fittings, capacity, solar_coil, backup_coil or"),
                program.err());
    }
}
