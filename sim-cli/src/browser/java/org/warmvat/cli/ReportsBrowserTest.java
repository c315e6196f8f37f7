package org.warmvat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.weather.file.WeatherFiles;

/**
 * The report of every command in a real browser, at the width of a telephone and of a desk: no error on the console, nothing asked
 * of the network, nothing wider than the window, headings in order, words for every picture, heads of tables that say what they
 * head, and the rules of axe-core, contrast among them.
 */
class ReportsBrowserTest {

    private static final int HEADER_LINES = 20;
    private static final int HOURS = 42 * 24;

    @TempDir
    static Path folder;

    private static Optional<Chromium> chromium = Optional.empty();

    @BeforeAll
    static void start() throws IOException {
        chromium = Chromium.found();
        List<String> lines = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        long lead = lines.stream()
                        .limit(HEADER_LINES)
                        .filter(line -> line.startsWith("#"))
                        .count()
                + 1;
        Files.writeString(
                folder.resolve("WEATHER"),
                lines.stream().limit(lead + HOURS).collect(Collectors.joining("\n", "", "\n")));
        Files.write(folder.resolve("DESIGN"), DesignDocument.demonstrationBytes());
        Files.writeString(
                folder.resolve("TUNNEL"),
                Files.readString(Path.of("../docs/examples/polytunnel-winter-rest.yaml"))
                        + "ground: {mean_c: 9, amplitude_k: 6, coldest_day: 40}\n");
        Files.writeString(folder.resolve("LOG"), log());
    }

    /** Two weeks in which an invented tank cools from 36 °C and is heated again. */
    private static String log() {
        StringBuilder log = new StringBuilder("time,slurry_c,backup_heat_w\n");
        LocalDateTime start = LocalDateTime.of(2025, 1, 5, 0, 0);
        double slurryC = 36;
        for (int hour = 1; hour < 14 * 24; hour++) {
            double heatW = hour / 48 % 2 == 0 ? 0 : 250;
            slurryC += (heatW - 4 * (slurryC - 5)) * 3600 / 3.6e6;
            log.append(String.format(Locale.ROOT, "%s,%.2f,%.0f%n", start.plusHours(hour), slurryC, heatW));
        }
        return log.toString();
    }

    @AfterAll
    static void stop() {
        chromium.ifPresent(Chromium::close);
    }

    /** Runs a command, whose DESIGN and WEATHER are those of the folder, and gives the address of its report. */
    private static String report(String command) {
        List<String> args = new ArrayList<>();
        for (String word : command.split(" ")) {
            args.add(word.matches("[A-Z]+") ? folder.resolve(word).toString() : word);
        }
        Path results = folder.resolve("results");
        args.addAll(List.of("--replace", "--out", results.toString()));
        Program program = new Program();
        assertEquals(0, program.run(args.toArray(String[]::new)), program.err());
        return results.resolve("report.html").toUri().toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "year",
                "carry DESIGN WEATHER --from 01-10 --to 02-05",
                "backup DESIGN WEATHER",
                "hold DESIGN WEATHER",
                "vary DESIGN WEATHER --set solar.area_m2=1:3:1",
                "vary DESIGN WEATHER --set backup.rated_w=150,500 --set solar.area_m2=1,2 --pareto backup_bought_kwh,outlay",
                "sizes DESIGN WEATHER --litres 500,900",
                "check DESIGN WEATHER",
                "weather look WEATHER",
                "spring --from 03-01,04-01",
                "holder TUNNEL WEATHER",
                "year TUNNEL WEATHER",
                "choose DESIGN src/test/resources/few-choices.yaml WEATHER",
                "advise DESIGN WEATHER",
                "compare DESIGN TUNNEL --weather WEATHER",
                "spread DESIGN WEATHER --draws 8",
                "fit DESIGN LOG --weather WEATHER"
            })
    void theReportIsFitToBeRead(String command) {
        Assumptions.assumeTrue(chromium.isPresent(), "no chromium and node on the PATH: reports were not looked at");
        String address = report(command);
        for (int widthPx : new int[] {390, 1200}) {
            try (Page page = chromium.orElseThrow().page(widthPx)) {
                List<String> faults = new ArrayList<>();
                page.onConsoleMessage(message -> faults.add("console: " + message.text()));
                page.onPageError(error -> faults.add("error: " + error));
                page.onRequest(request -> {
                    if (!request.url().equals(address) && !request.url().startsWith("data:")) {
                        faults.add("asks for " + request.url());
                    }
                });
                page.navigate(address);
                faults.addAll(faultsOf(page));
                page.screenshot(new Page.ScreenshotOptions()
                        .setPath(Path.of("target", "reports", command.replaceAll("[^a-z]+", "-") + widthPx + ".png"))
                        .setFullPage(true));
                page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
                assertTrue(
                        (Boolean) page.evaluate("() => [...document.images].some(i => i.offsetWidth > 0)"),
                        "no picture is printed");
                int pages = pagesBeforeAnnex(page);
                if (pages > 2) {
                    faults.add(pages + " printed pages before the annex");
                }
                assertEquals("", String.join("\n", faults), command + " at " + widthPx + " px");
            }
        }
    }

    /** What matters is printed first, on two pages; the annex begins on a page of its own. */
    private static int pagesBeforeAnnex(Page page) {
        page.evaluate("""
                () => { const annex = document.querySelector('.annex');
                    while (annex && annex.nextSibling) { annex.nextSibling.remove(); }
                    if (annex) { annex.remove(); } }""");
        String pdf =
                new String(page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true)), StandardCharsets.ISO_8859_1);
        return (int) Pattern.compile("/Type\\s*/Page\\b").matcher(pdf).results().count();
    }

    private static List<String> faultsOf(Page page) {
        List<String> faults = new ArrayList<>();
        faults.addAll(strings(page, """
                () => document.documentElement.scrollWidth > document.documentElement.clientWidth
                    ? [`${document.documentElement.scrollWidth} px wide`] : []"""));
        faults.addAll(strings(page, """
                () => { const levels = [...document.querySelectorAll('h1,h2,h3,h4')].map(h => +h.tagName[1]);
                    return levels.map((level, i) => [i === 0 ? 0 : levels[i - 1], level])
                        .filter(([before, level]) => level > before + 1 || (level === 1 && before > 0))
                        .map(pair => `heading ${pair[1]} after ${pair[0]}`); }"""));
        faults.addAll(strings(page, """
                () => [...document.images].filter(i => i.alt.length < 30 || !/[0-9]/.test(i.alt)).map(i => `alt "${i.alt}"`)"""));
        faults.addAll(strings(page, """
                () => [...document.images].filter(i => i.offsetWidth > 0 && i.naturalWidth > 1.06 * i.offsetWidth)
                    .map(i => `${i.alt.slice(0, 30)}: letters shrink from ${i.naturalWidth} to ${i.offsetWidth} px`)"""));
        faults.addAll(strings(page, """
                () => [...document.querySelectorAll('th')].filter(h => !h.scope).map(h => `th "${h.textContent}" without scope`)"""));
        new AxeBuilder(page)
                .analyze()
                .getViolations()
                .forEach(violation -> faults.add("axe " + violation.getId() + ": "
                        + violation.getNodes().stream()
                                .limit(3)
                                .map(node -> node.getHtml())
                                .collect(Collectors.joining(" "))));
        return faults;
    }

    private static List<String> strings(Page page, String script) {
        return ((List<?>) page.evaluate(script)).stream().map(String::valueOf).toList();
    }
}
