package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.option.Inputs;

/** {@code fit} as it is called: logs of a body of one temperature, odd ones among them, and what is said of each. */
class FitCommandTest extends FitRuns {

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
        assertEquals(Set.of(1), strokesOfLines());
        JsonNode answer = fit(design, log("gaps.csv", left));
        assertTrue(strokesOfLines().stream().allMatch(strokes -> strokes > 1), "lines run across the gap");
        JsonNode gaps = answer.path("fit").path("ua_w_k");
        assertTrue(
                answer.path("assumed").toString().contains("of more than three steps, the longest 2"),
                answer.path("assumed").toString());
        assertTrue(gaps.path("low").asDouble() < whole.path("value").asDouble());
        assertTrue(gaps.path("high").asDouble() > whole.path("value").asDouble());
    }

    /** Of how many strokes the long lines of the picture are. */
    private Set<Integer> strokesOfLines() throws IOException {
        return Pattern.compile(" d=\"([^\"]{500,})\"")
                .matcher(Files.readString(folder.resolve("out/fit.svg")))
                .results()
                .map(line -> line.group(1).split("M", -1).length - 1)
                .collect(Collectors.toSet());
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
}
