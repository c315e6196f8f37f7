package org.warmvat.cli;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.page.PageServer;
import org.warmvat.design.Design;
import org.warmvat.engine.HourSink;
import org.warmvat.engine.exponential.ExponentialEngine;
import org.warmvat.question.year.YearStudy;
import org.warmvat.tank.Runner;
import org.warmvat.weather.file.WeatherFiles;

/**
 * What the page costs: a benchmark, run only when it is named, that holds nothing to any bound. It writes {@code target/page-speed.txt}.
 * {@code -Dpage.moves} sets how many moves the server's memory is watched over.
 */
class PageSpeed {

    /** Until the machine code of all that a move goes through is made; what makes it counts as processor time too. */
    private static final int WARM_MOVES = 400;

    private static final int WARM_MOVES_IN_BROWSER = 40;
    private static final int MOVES = 100;
    private static final double PATIENCE_MS = 120_000;

    private final List<String> found = new ArrayList<>();

    private static String demonstration() {
        return new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);
    }

    private static PageServer server() throws IOException {
        return PageServer.start(0, new PageServer.Start(demonstration(), Optional.empty(), false), new PageQuestions());
    }

    private void tell(String line, Object... numbers) {
        String told = String.format(Locale.ROOT, line, numbers);
        System.out.println(told);
        found.add(told);
    }

    @Test
    void measure() throws Exception {
        tell("%d processors, Java %s", Runtime.getRuntime().availableProcessors(), Runtime.version());
        try (PageServer server = server()) {
            againstTheEngine(server);
            memory(server, Integer.getInteger("page.moves", 10_000));
        }
        inTheBrowser();
        Files.write(Path.of("target", "page-speed.txt"), found);
    }

    /** A request and its answer over the loopback, and one year with its run-in of the same design, in turns. */
    private void againstTheEngine(PageServer server) throws Exception {
        Runner runner = new Runner(WeatherFiles.demonstration(), new ExponentialEngine());
        double[] ofServer = new double[MOVES];
        double[] ofEngine = new double[MOVES];
        long serverCpuNs = 0;
        long engineCpuNs = 0;
        for (int move = -WARM_MOVES; move < MOVES; move++) {
            double areaM2 = 1 + Math.floorMod(move, 40) * 0.1;
            long cpuBegun = processorNs();
            long begun = System.nanoTime();
            moved(server, move, areaM2, "cool-maritime-hills");
            long answered = System.nanoTime();
            long cpuAnswered = processorNs();
            Design design = DesignDocument.demonstration().design().with("solar.area_m2", areaM2);
            long cpuRead = processorNs();
            long read = System.nanoTime();
            YearStudy.run(design, runner, HourSink.IGNORE);
            long run = System.nanoTime();
            if (move >= 0) {
                ofServer[move] = (answered - begun) / 1e6;
                ofEngine[move] = (run - read) / 1e6;
                serverCpuNs += cpuAnswered - cpuBegun;
                engineCpuNs += processorNs() - cpuRead;
            }
        }
        double server50 = median(ofServer);
        double engine50 = median(ofEngine);
        tell("server, request to answer over the loopback: median %.1f ms", server50);
        tell("one engine year with its run-in: median %.1f ms; ratio %.2f", engine50, server50 / engine50);
        tell(
                "processor time of all threads, browser's side of the request included: %.1f and %.1f ms; ratio %.2f",
                serverCpuNs / 1e6 / MOVES, engineCpuNs / 1e6 / MOVES, (double) serverCpuNs / engineCpuNs);
    }

    /** What a busy machine does not spoil. */
    private static long processorNs() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void moved(PageServer server, int number, double areaM2, String weather) throws Exception {
        String text = com.fasterxml.jackson.databind.node.TextNode.valueOf(demonstration())
                .toString();
        String asked = String.format(
                Locale.ROOT,
                "{\"page\":\"speed\",\"number\":%d,\"weather\":\"%s\",\"set\":[{\"path\":\"solar.area_m2\",\"value\":%.2f}],\"text\":%s}",
                number + WARM_MOVES,
                weather,
                areaM2,
                text);
        HttpResponse<byte[]> answer = posted(server, "year", asked);
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(answer.statusCode() + new String(answer.body(), StandardCharsets.UTF_8));
        }
    }

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private static HttpResponse<byte[]> posted(PageServer server, String path, String body) throws Exception {
        URI address = URI.create(server.address());
        HttpRequest request = HttpRequest.newBuilder(address.resolve(path))
                .header("Origin", "http://" + address.getAuthority())
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    /** Memory in use after a collection, ten times on the way; in a file of thirty days, for what a year leaves behind a month does too. */
    private void memory(PageServer server, int moves) throws Exception {
        String year = new String(WeatherFiles.demonstrationBytes(), StandardCharsets.UTF_8);
        List<String> lines = year.lines().toList();
        int head = (int) lines.stream().takeWhile(line -> line.startsWith("#")).count() + 1;
        String month = String.join("\n", lines.subList(0, head + 30 * 24)) + "\n";
        String told = new String(posted(server, "weather", month).body(), StandardCharsets.UTF_8);
        String id = told.replaceFirst("(?s)^\\{\"id\":\"([^\"]*)\".*", "$1");
        StringBuilder used = new StringBuilder();
        for (int move = 1; move <= moves; move++) {
            moved(server, MOVES + move, 1 + move % 500 * 0.01, id);
            if (move % (moves / 10) == 0) {
                System.gc();
                Runtime machine = Runtime.getRuntime();
                used.append(String.format(
                        Locale.ROOT, " %.1f", (machine.totalMemory() - machine.freeMemory()) / 1048576.0));
            }
        }
        tell("memory in use over %d moves, MB at each tenth:%s", moves, used);
    }

    /** From a slider's event to the frame after all is drawn, by the arrow keys and while dragging. */
    private void inTheBrowser() throws IOException {
        Optional<Chromium> chromium = Chromium.found();
        Assumptions.assumeTrue(
                chromium.isPresent(), "no chromium and node on the PATH: nothing was measured in a browser");
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        try (Chromium browser = chromium.get();
                PageServer server = server();
                Page page = browser.page(1400)) {
            page.navigate(server.address());
            assertThat(page.locator("#short")).hasAttribute("aria-busy", "false");
            Locator slider = page.locator("[id='s-solar.area_m2']");
            slider.focus();
            for (int move = 0; move < WARM_MOVES_IN_BROWSER + MOVES; move++) {
                if (move == WARM_MOVES_IN_BROWSER) {
                    page.evaluate("() => performance.clearMeasures('redrawn')");
                }
                slider.press(move / 20 % 2 == 0 ? "ArrowRight" : "ArrowLeft");
                assertThat(page.locator("#short")).hasAttribute("aria-busy", "false");
                page.waitForTimeout(50);
            }
            tell("slider's move to redrawn year, single moves: median %.0f ms", redrawn(page));
            drag(page, slider);
            tell("slider's move to redrawn year, while dragging: median %.0f ms", redrawn(page));
        }
    }

    private static void drag(Page page, Locator slider) {
        page.evaluate("() => performance.clearMeasures('redrawn')");
        var box = slider.boundingBox();
        double y = box.y + box.height / 2;
        page.mouse().move(box.x + 0.3 * box.width, y);
        page.mouse().down();
        for (int i = 0; i < 300; i++) {
            page.mouse().move(box.x + (0.3 + 0.5 * Math.abs(i % 100 - 50) / 50.0) * box.width, y);
            page.waitForTimeout(16);
        }
        page.mouse().up();
        assertThat(page.locator("#short")).hasAttribute("aria-busy", "false");
    }

    private static double redrawn(Page page) {
        List<?> durations =
                (List<?>) page.evaluate("() => performance.getEntriesByName('redrawn').map(entry => entry.duration)");
        return median(durations.stream()
                .mapToDouble(one -> ((Number) one).doubleValue())
                .toArray());
    }
}
