package org.warmvat.cli;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.warmvat.weather.file.WeatherFiles;

/**
 * A newcomer's whole path over the page in a real browser, by mouse and by keyboard alone, at the widths of a telephone, a tablet and a
 * desk: no word on the console, nothing asked of another place, nothing wider than the window, and the rules of axe-core. Pictures of the page
 * go to {@code target/page} to be looked at.
 */
class PageBrowserTest extends PageInBrowser {

    private Page opened(int widthPx, Browser.NewPageOptions options) {
        Page page = chromium.orElseThrow().page(widthPx, options.setAcceptDownloads(true));
        page.setDefaultTimeout(PATIENCE_MS);
        page.onConsoleMessage(message -> {
            // a design or weather file that is refused is no fault of the page
            if (!message.text().contains("status of 422")) {
                faults.add("console: " + message.text());
            }
        });
        page.onPageError(error -> faults.add("error: " + error));
        page.onDialog(dialog -> faults.add("dialog: " + dialog.message()));
        page.onRequest(request -> {
            if (!request.url().startsWith(server.address()) && !request.url().matches("(data|blob):.*")) {
                faults.add("asks for " + request.url());
            }
        });
        page.navigate(server.address());
        isUpToDate(page);
        return page;
    }

    private static void isUpToDate(Page page) {
        assertThat(page.locator("#status")).containsText("up to date");
    }

    private static String verdict(Page page) {
        return page.locator("#short").innerText();
    }

    private static Locator slider(Page page, String path) {
        return page.locator("[id='s-" + path + "']");
    }

    private void lookedAt(Page page, String name) {
        assertEquals(
                0,
                page.evaluate(
                        "() => Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth)"),
                "wider than the window: " + name);
        new AxeBuilder(page)
                .analyze()
                .getViolations()
                .forEach(violation -> faults.add("axe " + violation.getId() + " (" + violation.getImpact() + "): "
                        + violation.getNodes().stream()
                                .limit(3)
                                .map(node -> node.getHtml())
                                .collect(Collectors.joining(" "))));
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target", "page", name + ".png"))
                .setFullPage(true));
        assertEquals("", String.join("\n", faults), name);
    }

    private static void changed(Page page, String before) {
        assertThat(page.locator("#short")).not().hasText(before);
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 800, 1400})
    void aNewcomersPathByMouse(int widthPx) throws IOException {
        try (Page page = opened(widthPx, new Browser.NewPageOptions())) {
            String first = verdict(page);
            drag(page, slider(page, "solar.area_m2"), 0.2, 0.9);
            changed(page, first);
            isUpToDate(page);
            String text = page.locator("#text").inputValue();
            assertTrue(Pattern.compile("  area_m2: 5[.0-9]*\n").matcher(text).find(), text);
            assertTrue(text.contains("stands_on: legs                  # legs | ground"), "a comment is gone");
            pinAndCompare(page);
            zoomAndChooseAnHour(page);
            lookedAt(page, "mouse-year-" + widthPx);
            faultBesideItsField(page);
            ask(page, "check");
            assertThat(page.locator("#answer .report")).containsText("Cautions");
            zipOfTheReport(page);
            weather(page);
            saved(page);
            lookedAt(page, "mouse-" + widthPx);
            page.locator("#stop").click();
            assertThat(page.locator("#status")).containsText("has been stopped");
        }
    }

    /** Drags a slider from one part of its length to another, in many small moves. */
    private static void drag(Page page, Locator slider, double from, double to) {
        slider.scrollIntoViewIfNeeded();
        BoundingBox box = slider.boundingBox();
        double y = box.y + box.height / 2;
        page.mouse().move(box.x + from * box.width, y);
        page.mouse().down();
        for (int i = 0; i <= 40; i++) {
            page.mouse().move(box.x + (from + (to - from) * i / 40) * box.width, y);
        }
        page.mouse().up();
    }

    private void pinAndCompare(Page page) {
        page.locator("#pin").click();
        assertThat(page.locator("#differences")).containsText("No number of the design differs");
        drag(page, slider(page, "backup.rated_w"), 0.33, 0.05);
        assertThat(page.locator("#differences")).containsText("backup.rated_w");
        assertThat(page.locator("#chart-temperature .legend")).containsText("pinned");
        isUpToDate(page);
    }

    private void zoomAndChooseAnHour(Page page) {
        Locator plot = page.locator("#chart-temperature .u-over");
        plot.scrollIntoViewIfNeeded();
        BoundingBox box = plot.boundingBox();
        double y = box.y + box.height / 2;
        page.mouse().move(box.x + 0.40 * box.width, y);
        page.mouse().down();
        page.mouse().move(box.x + 0.42 * box.width, y);
        page.mouse().move(box.x + 0.43 * box.width, y);
        page.mouse().up();
        page.mouse().click(box.x + 0.5 * box.width, y);
        assertThat(page.locator("#tank")).containsText("the hour from 2025-0");
        assertThat(page.locator("#chart-temperature .legend")).containsText("°C");
        assertNotEquals("", page.locator("#hour").inputValue());
        page.locator("#span").selectOption("");
        page.locator("#moment").selectOption("6");
        assertThat(page.locator("#tank")).containsText("mean of July 2025");
    }

    private void faultBesideItsField(Page page) {
        page.locator("details[data-key=solar] > summary").click();
        Locator area = page.locator("[id='f-solar.area_m2']");
        String before = area.inputValue();
        area.fill("-3");
        area.press("Tab");
        assertThat(page.locator("#faults")).containsText("solar.area_m2 -3, expected a number, 0 to 1000 m2");
        assertThat(area.locator("xpath=..")).containsText("-3, expected a number, 0 to 1000 m2");
        assertThat(area).hasAttribute("aria-invalid", "true");
        page.locator("#undo").click();
        assertThat(page.locator("#faults")).isHidden();
        isUpToDate(page);
        assertThat(area).hasValue(before);
    }

    private static void ask(Page page, String question) {
        page.locator("#q-" + question).click();
    }

    private static void zipOfTheReport(Page page) throws IOException {
        Download download = page.waitForDownload(
                () -> page.locator("text=whole folder of results").click());
        assertTrue(Files.size(download.path()) > 10_000, "the zip is too small");
    }

    private void weather(Page page) {
        page.locator("#sample").selectOption("cold-continental");
        assertThat(page.locator("#weather-told")).containsText("Brannik Steppe");
        assertThat(page.locator("#subtitle")).containsText("Brannik Steppe");
        page.locator("#weather-file")
                .setInputFiles(new FilePayload("no.csv", "text/csv", "a,b\n1,2\n".getBytes(StandardCharsets.UTF_8)));
        assertThat(page.locator("#weather-faults")).containsText("weather file: ");
        byte[] shifted = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                .replaceFirst("(?m)^# longitude_deg: .*$", "# longitude_deg: -120")
                .getBytes(StandardCharsets.UTF_8);
        page.locator("#weather-file").setInputFiles(new FilePayload("shifted.csv", "text/csv", shifted));
        assertThat(page.locator("#weather-read")).containsText("Doubts");
        page.locator("summary", new Page.LocatorOptions().setHasText("Twelve monthly means"))
                .click();
        page.locator("#air-0").fill("-4");
        page.locator("#make-weather").click();
        assertThat(page.locator("#subtitle")).containsText("means typed in");
        isUpToDate(page);
    }

    private static void saved(Page page) throws IOException {
        Download download = page.waitForDownload(() -> page.locator("#save").click());
        assertEquals("design.yaml", download.suggestedFilename());
        String text = Files.readString(download.path());
        assertEquals(
                DESIGN.lines().filter(line -> line.contains("#")).count(),
                text.lines().filter(line -> line.contains("#")).count());
        assertNotEquals(DESIGN, text);
    }

    /** Presses Tab until something has the focus, as one does who has no mouse. */
    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 400; i++) {
            if ((Boolean) page.evaluate("selector => document.activeElement.matches(selector)", selector)) {
                assertTrue(
                        (Boolean) page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle !== 'none'"
                                + " || document.activeElement.tabIndex < 0"),
                        "the focus is not seen: " + selector);
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("never reached by Tab: " + selector);
    }

    @ParameterizedTest
    @ValueSource(ints = {390, 800, 1400})
    void aNewcomersPathByKeyboardAlone(int widthPx) {
        try (Page page = opened(widthPx, new Browser.NewPageOptions().setReducedMotion(ReducedMotion.REDUCE))) {
            String first = verdict(page);
            page.keyboard().press("Tab");
            assertThat(page.locator(".skip")).isFocused();
            tabTo(page, "#pin");
            page.keyboard().press("Enter");
            tabTo(page, "[id='s-solar.area_m2']");
            for (int i = 0; i < 15; i++) {
                page.keyboard().press("ArrowRight");
            }
            changed(page, first);
            assertThat(slider(page, "solar.area_m2")).hasAttribute("aria-valuetext", "3.5 m²");
            isUpToDate(page);
            tabTo(page, "#span");
            page.keyboard().type("March");
            tabTo(page, "#closer");
            page.keyboard().press("Enter");
            page.keyboard().press("Space");
            tabTo(page, "#moment");
            page.keyboard().type("March");
            assertThat(page.locator("#tank")).containsText("mean of March 2025");
            tabTo(page, "#q-carry");
            page.keyboard().press("Enter");
            assertThat(page.locator("#answer .report")).containsText("Cautions");
            assertThat(page.locator("#working")).isHidden();
            tabTo(page, "details[data-key=control] > summary");
            page.keyboard().press("Enter");
            tabTo(page, "[id='f-control.setpoint_c']");
            page.keyboard().press("Control+A");
            page.keyboard().type("34");
            page.keyboard().press("Enter");
            assertThat(page.locator("#subtitle")).containsText("set-point 34.0 °C");
            assertThat(page.locator("[id='f-control.setpoint_c']")).isFocused();
            isUpToDate(page);
            tabTo(page, "#undo");
            lookedAt(page, "keyboard-" + widthPx);
            page.keyboard().press("Enter");
            assertThat(page.locator("#subtitle")).containsText("set-point 36.0 °C");
            page.keyboard().press("Control+z");
            assertThat(slider(page, "solar.area_m2")).not().hasValue("3.5");
            assertEquals("", String.join("\n", faults));
        }
    }

    @Test
    void aQuestionCanBeStopped() {
        try (Page page = opened(1400, new Browser.NewPageOptions())) {
            page.locator("#q-sizes").locator("xpath=../details/summary").click();
            page.locator("[id='q-sizes--litres']")
                    .fill(java.util.stream.IntStream.range(300, 700)
                            .mapToObj(Integer::toString)
                            .collect(Collectors.joining(",")));
            ask(page, "sizes");
            assertThat(page.locator("#reached")).containsText(" of 4");
            page.locator("#cancel").click();
            assertThat(page.locator("#answer")).containsText("Stopped.");
            ask(page, "check");
            assertThat(page.locator("#answer .report")).containsText("Cautions");
            assertEquals("", String.join("\n", faults));
        }
    }

    /** In grey, lines of one picture differ by dashes or width; nothing moves for whom nothing should. */
    @Test
    void inGreyAndWithReducedMotionNothingIsLost() {
        try (Page page = opened(1400, new Browser.NewPageOptions().setReducedMotion(ReducedMotion.REDUCE))) {
            page.evaluate("() => { document.documentElement.style.filter = 'grayscale(1)'; }");
            assertEquals(List.of(), page.evaluate("""
                    () => [...document.querySelectorAll('.chart')].flatMap(chart => {
                        const looks = [...chart.querySelectorAll('.legend line')]
                            .map(line => `${line.getAttribute('stroke-width')} ${line.getAttribute('stroke-dasharray')}`);
                        return looks.filter((look, i) => looks.indexOf(look) !== i && look !== '1 null').map(look => chart.id + ' ' + look); })"""));
            assertEquals(List.of(), page.evaluate("""
                    () => [...document.querySelectorAll('*')].filter(e => parseFloat(getComputedStyle(e).transitionDuration) > 0
                        || getComputedStyle(e).animationName !== 'none').map(e => e.tagName)"""));
            lookedAt(page, "grey");
        }
    }

    private static final String HOSTILE = "<img src=x onerror=alert(1)></title><script>alert(2)</script>";

    @Test
    void hostileTextsStayTexts() throws IOException {
        try (Page page = opened(800, new Browser.NewPageOptions())) {
            String design = DESIGN.replaceFirst("title: .*", "title: '" + HOSTILE + "'")
                    .replace("gas neck", "\"" + HOSTILE + "\"");
            page.locator("#open")
                    .setInputFiles(new FilePayload(
                            "\"><svg onload=alert(3)>.yaml", "text/yaml", design.getBytes(StandardCharsets.UTF_8)));
            assertThat(page.locator("#title")).hasText(HOSTILE);
            byte[] weather = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8)
                    .replaceFirst("(?m)^# site: .*$", "# site: " + HOSTILE)
                    .getBytes(StandardCharsets.UTF_8);
            page.locator("#weather-file").setInputFiles(new FilePayload(HOSTILE, "text/csv", weather));
            assertThat(page.locator("#subtitle")).containsText("onerror=alert(1)");
            page.locator("details[data-key=fittings] > summary").click();
            ask(page, "check");
            assertThat(page.locator("#answer .report")).containsText("onerror=alert(1)");
            Page report = page.waitForPopup(
                    () -> page.locator("text=as a page of its own").click());
            assertThat(report.locator("h1"))
                    .containsText("onerror=alert(1)"); // a page not yet attached cannot be loaded again
            report.onConsoleMessage(message -> faults.add("report: " + message.text()));
            report.reload();
            assertThat(report.locator("h1")).containsText("onerror=alert(1)");
            assertEquals(0, report.locator("img[src=x], script").count());
            assertEquals(
                    "rgb(27, 73, 101)",
                    report.evaluate("() => getComputedStyle(document.querySelector('.verdict')).borderTopColor"),
                    "the report lost its style");
            assertEquals(0, page.locator("img[src=x], [onerror], svg[onload]").count());
            Download download = page.waitForDownload(() -> page.locator("#save").click());
            assertEquals(design, Files.readString(download.path()));
            assertEquals("", String.join("\n", faults));
        }
    }

    /** The worst case: a page of another origin that knows the whole address. */
    @Test
    void aPageOfAnotherOriginCanNeitherReadNorSteer() throws IOException {
        try (Foreigner foreigner = new Foreigner();
                BrowserContext context = chromium.orElseThrow().context();
                Page page = context.newPage();
                Page other = context.newPage()) {
            page.navigate(server.address());
            isUpToDate(page);
            other.navigate(foreigner.address());
            String before = page.locator("#text").inputValue();
            for (String attempt : Foreigner.ATTEMPTS) {
                Object got = other.evaluate(attempt, server.address());
                assertEquals("nothing", got, attempt);
            }
            assertFalse(other.url().isEmpty());
            other.navigate(foreigner.address());
            other.evaluate("address => { location.href = address; }", server.address());
            other.waitForTimeout(1000);
            assertEquals(0, other.locator("#short").count());
            String elsewhere = server.address().replace("127.0.0.1", "localhost");
            assertThrows(PlaywrightException.class, () -> other.navigate(elsewhere));
            assertEquals(0, other.locator("#short").count());
            page.reload();
            isUpToDate(page);
            assertEquals(before, page.locator("#text").inputValue());
            page.evaluate("address => { location.href = address; }", foreigner.address());
            page.waitForURL(foreigner.address());
            assertTrue(
                    foreigner.referers().stream().noneMatch(from -> from.startsWith(server.address())),
                    "the address with its secret goes along to another place");
        }
    }
}
