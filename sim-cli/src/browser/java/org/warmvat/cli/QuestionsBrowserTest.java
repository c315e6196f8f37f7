package org.warmvat.cli;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every question that the page offers is asked in a real browser, with its smallest inputs; its report is shown in place and kept. */
class QuestionsBrowserTest extends PageInBrowser {

    private static final Path EXAMPLES = Path.of("..", "docs", "examples");
    private static final String CHOICES = """
            by: cost
            years: 15
            interest: 0.03
            choose:
              solar.area_m2: {values: [2, 3], price_per_m2: 300}
            """;

    /** What a question needs to be quick, by the ids of its fields. */
    private static final Map<String, Map<String, String>> TYPED = Map.of(
            "backup", Map.of("--sizes", "500"),
            "sizes", Map.of("--litres", "300,600"),
            "spring", Map.of("--from", "04-01"),
            "spread", Map.of("--draws", "64"),
            "vary", Map.of("--set", "solar.area_m2=1,2"));

    static Stream<String> questions() {
        return new PageQuestions().all().stream().map(question -> question.name());
    }

    private Page opened() {
        Page page = chromium.orElseThrow().page(1400, new Browser.NewPageOptions().setAcceptDownloads(true));
        page.setDefaultTimeout(PATIENCE_MS);
        page.onConsoleMessage(message -> faults.add("console: " + message.text()));
        page.onPageError(error -> faults.add("error: " + error));
        page.navigate(server.address());
        assertThat(page.locator("#status")).containsText("up to date");
        return page;
    }

    private static Locator field(Page page, String question, String field) {
        return page.locator("[id='q-" + question + field + "']");
    }

    /** Fills what is needed in, with the details of the question opened. */
    private static void fillIn(Page page, String question) throws IOException {
        Locator options = page.locator(".question:has(#q-" + question + ") > details > summary");
        if (options.count() > 0) {
            options.click();
        }
        TYPED.getOrDefault(question, Map.of())
                .forEach((name, value) -> field(page, question, name).fill(value));
        switch (question) {
            case "fit" -> {
                field(page, question, "LOG").setInputFiles(EXAMPLES.resolve("log.txt"));
                field(page, question, "--log-layout").setInputFiles(EXAMPLES.resolve("log-layout.yaml"));
                field(page, question, "--factors").fill("envelope");
            }
            case "choose" ->
                field(page, question, "CHOICES")
                        .setInputFiles(
                                new FilePayload("choices.yaml", "text/yaml", CHOICES.getBytes(StandardCharsets.UTF_8)));
            case "holder" -> {
                page.locator("#open").setInputFiles(EXAMPLES.resolve("polytunnel-winter-rest.yaml"));
                assertThat(page.locator("#title")).not().containsText("Thornacre");
            }
            case "compare" ->
                field(page, question, "another-design").setInputFiles(EXAMPLES.resolve("box-on-the-ground.yaml"));
            default -> {}
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyQuestionIsAnsweredInPlaceAndCanBeKept(String question) throws IOException {
        try (Page page = opened()) {
            fillIn(page, question);
            page.locator("#q-" + question).click();
            assertThat(page.locator("#working")).isHidden();
            assertEquals(
                    "", page.locator("#answer .fault").allInnerTexts().stream().collect(Collectors.joining()));
            assertThat(page.locator("#answer .report .verdict")).isVisible();
            assertThat(page.locator("#answer .report")).containsText("Cautions");
            Download download = page.waitForDownload(
                    () -> page.locator("text=whole folder of results").click());
            TreeSet<String> kept = new TreeSet<>();
            try (ZipFile zip = new ZipFile(download.path().toFile())) {
                zip.stream().forEach(entry -> kept.add(entry.getName()));
            }
            String folder = "warmvat-" + question + "/";
            assertTrue(kept.containsAll(List.of(folder + "report.html", folder + "summary.json")), kept.toString());
            page.locator("#asked")
                    .screenshot(new Locator.ScreenshotOptions()
                            .setPath(Path.of("target", "page", "answer-" + question + ".png")));
            assertEquals("", String.join("\n", faults));
        }
    }

    @Test
    void aLongQuestionIsStoppedAndTheNextOneAnswered() {
        try (Page page = opened()) {
            page.locator("#q-spread").click();
            assertThat(page.locator("#reached")).containsText(" of ");
            page.locator("#cancel").click();
            assertThat(page.locator("#answer")).containsText("Stopped.");
            page.locator("#q-check").click();
            assertThat(page.locator("#answer .report")).containsText("Cautions");
            assertEquals("", String.join("\n", faults));
        }
    }

    /** A foreign file is refused without its layout and read with it; what is asked then is asked of the same file. */
    @Test
    void aForeignWeatherFileIsReadByItsLayout() throws IOException {
        try (Page page = opened()) {
            faults.clear();
            page.locator("#weather-file").setInputFiles(EXAMPLES.resolve("service.csv"));
            assertThat(page.locator("#weather-faults")).isVisible();
            faults.removeIf(fault -> fault.contains("status of 422"));
            page.locator("#weather-layout").setInputFiles(EXAMPLES.resolve("service-layout.yaml"));
            assertThat(page.locator("#weather-faults")).isHidden();
            assertThat(page.locator("#weather-told")).not().containsText("Thornacre");
            assertThat(page.locator("#status")).containsText("up to date");
            page.locator("#q-check").click();
            assertThat(page.locator("#working")).isHidden();
            assertThat(page.locator("#answer .report")).containsText("layout");
            assertEquals("", String.join("\n", faults));
        }
    }

    @Test
    void theFlowsOfAnHourAreToldPartByPartAndAddUp() {
        try (Page page = opened()) {
            page.locator("#hour").fill("2025-01-15T12:00");
            page.locator("#hour").dispatchEvent("change");
            assertThat(page.locator("#tank")).containsText("the hour from 2025-01-15 12:00");
            for (String part : List.of("wall", "lid", "base", "fittings", "warming the feed", "vapour in the gas")) {
                assertThat(page.locator("#tank tbody")).containsText(part);
            }
            Object left = page.evaluate(
                    "() => { const watts = row => Number(row.lastElementChild.textContent.replace('−', '-'));"
                            + " return [...document.querySelectorAll('#tank tbody tr')].reduce((sum, row) => sum + watts(row), 0)"
                            + " - watts(document.querySelector('#tank tfoot tr')); }");
            assertEquals(0, ((Number) left).doubleValue(), 1, "what is left over");
            page.locator("[id='s-solar.area_m2']").press("ArrowRight");
            assertThat(page.locator("#status")).containsText("up to date");
            assertThat(page.locator("#tank")).containsText("the hour from 2025-01-15 12:00");
            assertThat(page.locator("#tank")).not().containsText("not to scale");
            page.locator("[id='s-solar.area_m2']").press("End");
            assertThat(page.locator("#tank svg")).containsText("6.00 m²not to scale");
            assertEquals("", String.join("\n", faults));
        }
    }
}
