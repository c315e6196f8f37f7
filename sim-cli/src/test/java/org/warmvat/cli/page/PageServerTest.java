package org.warmvat.cli.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.warmvat.cli.answer.Document;
import org.warmvat.cli.answer.folder.ResultsFolder;
import org.warmvat.cli.answer.year.YearAnswer;
import org.warmvat.cli.file.DesignDocument;
import org.warmvat.cli.file.DesignText;
import org.warmvat.engine.HourSink;
import org.warmvat.question.Parallel;
import org.warmvat.question.year.YearResult;
import org.warmvat.question.year.YearStudy;

/** The server lets in what it should and nothing else, on the wire. */
class PageServerTest {

    private static final String DESIGN = new String(DesignDocument.demonstrationBytes(), StandardCharsets.UTF_8);

    private final CountDownLatch working = new CountDownLatch(1);
    private PageServer server;
    private URI address;

    /** A question that waits until it is stopped. */
    private final Questions questions = new Questions() {
        @Override
        public List<Question> all() {
            return List.of(new Question("wait", "Waits.", "", List.of(), List.of(), false));
        }

        @Override
        public Document answer(String question, Map<String, String> options, Given given, Parallel.Progress progress) {
            progress.reached(3, 7);
            working.countDown();
            try {
                new CountDownLatch(1).await();
            } catch (InterruptedException stopped) {
                throw new CancellationException("stopped");
            }
            throw new IllegalStateException();
        }

        @Override
        public String starter(String litres, String setpointC, WeatherGiven weather) {
            return litres;
        }
    };

    @BeforeEach
    void start() throws IOException {
        server = PageServer.start(0, new PageServer.Start(DESIGN, Optional.empty(), false), questions);
        address = URI.create(server.address());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private String host() {
        return address.getAuthority();
    }

    private PageWire.Answer sent(String method, String path, byte[] body, String... headers) throws IOException {
        return new PageWire(address).sent(method, path, body, headers);
    }

    private PageWire.Answer got(String path, String... headers) throws IOException {
        return new PageWire(address).got(path, headers);
    }

    private PageWire.Answer posted(String path, String body) throws IOException {
        return new PageWire(address).posted(path, body);
    }

    @Test
    void thePageAndItsPartsCarryAStrictPolicy() throws IOException {
        for (String path : List.of("", "page.css", "page.js", "uplot.js", "start")) {
            PageWire.Answer answer = got(path);
            assertEquals(200, answer.code(), path);
            assertTrue(
                    answer.head()
                            .contains(
                                    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                                            + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"),
                    answer.head());
            for (String header : List.of(
                    "Cache-control: no-store",
                    "X-content-type-options: nosniff",
                    "Referrer-policy: no-referrer",
                    "Cross-origin-resource-policy: same-origin",
                    "Cross-origin-opener-policy: same-origin")) {
                assertTrue(answer.head().contains(header), header + " in " + answer.head());
            }
        }
        assertFalse(got("").text().matches("(?s).*(<style|style=|onclick|<script>|https?://).*"));
    }

    @ParameterizedTest
    @CsvSource({
        "Host: evil.example, 421",
        "Host: localhost:80, 421",
        "Origin: http://evil.example, 403",
        "Origin: null, 403",
        "Sec-Fetch-Site: cross-site, 403",
        "Sec-Fetch-Site: same-site, 403",
        "Sec-Fetch-Site: none, 200",
        "Sec-Fetch-Site: same-origin, 200"
    })
    void foreignRequestsStayOutside(String header, int code) throws IOException {
        assertEquals(code, got("start", header).code());
    }

    @Test
    void twoHostsAreNone() throws IOException {
        assertEquals(421, got("start", "Host: " + host(), "Host: evil.example").code());
    }

    @Test
    void changesNeedTheOriginOfThePage() throws IOException {
        assertEquals(403, sent("POST", address.getPath() + "stop", new byte[0]).code());
        assertEquals(
                403,
                sent("POST", address.getPath() + "stop", new byte[0], "Origin: http://evil.example")
                        .code());
        assertEquals(
                403,
                sent(
                                "POST",
                                address.getPath() + "stop",
                                new byte[0],
                                "Origin: http://" + host(),
                                "Sec-Fetch-Site: none")
                        .code());
        assertEquals(200, got("start").code());
        assertEquals(200, posted("stop", "").code());
    }

    @Test
    void withoutTheSecretThereIsNothing() throws IOException {
        String secret = address.getPath();
        for (String path : List.of(
                "/",
                "/start",
                secret.substring(0, secret.length() - 1),
                "/" + "0".repeat(32) + "/start",
                secret.toUpperCase(java.util.Locale.ROOT) + "start",
                "/x" + secret + "start")) {
            PageWire.Answer answer = sent("GET", path, new byte[0]);
            assertTrue(answer.code() == 404 || answer.code() == 400, path + ": " + answer.head());
            assertEquals("", answer.text(), path);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "page.html",
        "page.jsx",
        "start/",
        "pages",
        "../start",
        "..%2f..%2fetc%2fpasswd",
        "%2e%2e/start",
        "page.js/../page.css",
        "ask/1/report.html",
        "ask/0x1/events",
        "ask/99999999999/events",
        "org/warmvat/cli/version.txt"
    })
    void onlyKnownPathsAreThere(String path) throws IOException {
        assertEquals(404, got(path).code(), path);
    }

    @Test
    void theBrowsersIconIsNoError() throws IOException {
        assertEquals(204, sent("GET", "/favicon.ico", new byte[0]).code());
    }

    @Test
    void tooMuchIsRefused() throws IOException {
        PageWire.Answer answer = posted("year", " ".repeat(2_000_001));
        assertEquals(413, answer.code());
        assertEquals("{\"sentences\":[\"More than 2000000 bytes, expected fewer.\"]}", answer.text());
        assertEquals(413, posted("closed", " ".repeat(2_000_001)).code());
    }

    @Test
    void tooManyRequestsInASecondAreTooMany() {
        AtomicLong clock = new AtomicLong(5_000_000_000L);
        Door door = new Door(1, clock::get);
        for (int i = 0; i < 200; i++) {
            assertTrue(door.inRate());
        }
        assertFalse(door.inRate());
        clock.addAndGet(1_000_000_000L);
        assertTrue(door.inRate());
    }

    @Test
    void halfARequestHoldsNobodyUp() throws IOException {
        List<Socket> halves = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Socket half = new Socket(address.getHost(), address.getPort());
            half.getOutputStream().write("POST /x HTTP/1.1\r\nHost".getBytes(StandardCharsets.UTF_8));
            halves.add(half);
        }
        assertEquals(200, got("start").code());
        for (Socket half : halves) {
            half.close();
        }
    }

    @Test
    void onlyThisMachineIsServed() throws IOException {
        assertEquals("127.0.0.1", address.getHost());
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(other -> !other.isLoopbackAddress())
                .toList();
        for (InetAddress other : others) {
            assertThrows(ConnectException.class, () -> new Socket(other, address.getPort()), other.toString());
        }
    }

    @Test
    void aFaultIsToldInTheProgramsWordsAndTheTreeIsStillShown() throws IOException {
        String asked = "{\"page\":\"a\",\"number\":1,\"weather\":\"cool-maritime-hills\",\"text\":"
                + new String(Reply.jsonBytes(DESIGN), StandardCharsets.UTF_8)
                + ",\"set\":[{\"path\":\"solar.area_m2\",\"value\":-3}]}";
        PageWire.Answer answer = posted("year", asked);
        assertEquals(422, answer.code());
        assertTrue(
                answer.text()
                        .startsWith(
                                "{\"sentences\":[\"design.yaml line 60: solar.area_m2 -3, expected a number, 0 to 1000 m2\"],\"text\":\""),
                answer.text());
        assertTrue(answer.text().contains("\"tree\":{\"title\":\"Thornacre"), answer.text());
        PageWire.Answer nothing = posted("year", "{\"text\":\"\\u0000\",\"weather\":\"cool-southern\"}");
        assertEquals(422, nothing.code(), nothing.text());
        assertEquals(
                422, posted("year", "{\"weather\":\"no such\",\"text\":\"\"}").code());
        assertEquals(500, posted("year", "no json").code());
    }

    /** Opened twice and closed twice; what is set on the page holds. */
    @Test
    @Timeout(60)
    void theServerStopsWhenItsLastPageIsClosedWhereItIsAskedTo() throws Exception {
        for (int page = 0; page < 2; page++) {
            assertEquals(200, got("start").code());
        }
        assertEquals(200, posted("until-closed", "true").code());
        assertEquals(200, posted("closed", "").code());
        assertEquals(200, got("page.css").code());
        assertEquals(200, posted("closed", "").code());
        server.await();
        assertThrows(ConnectException.class, () -> got("page.css"));
    }

    @Test
    void weatherIsReadMadeOrRefused() throws IOException {
        PageWire.Answer refused = posted("weather", "a,b\n1,2\n");
        assertEquals(422, refused.code());
        assertTrue(refused.text().contains("weather file: "), refused.text());
        PageWire.Answer made = posted(
                "weather",
                "# warmvat normals 1\n# site: means typed in\n# latitude_deg: 50\n# longitude_deg: 10\n"
                        + "# elevation_m: 200\n# utc_offset_h: 1\n# seed: 1\nmonth,air_c,daily_range_k,global_kwh_m2_day,relative_humidity,wind_m_s\n"
                        + IntStream.rangeClosed(1, 12)
                                .mapToObj(month -> month + ",8,9,1.5,0.8,3\n")
                                .collect(Collectors.joining()));
        assertEquals(200, made.code(), made.text());
        assertTrue(
                made.text().contains("\"place\":\"means typed in\",\"latitude_deg\":50.0,\"hours\":8760"), made.text());
        assertEquals(400, posted("weather?fill=-1&layout=0", "").code());
        assertEquals(400, posted("weather?fill=0&layout=9", "12345678").code());
    }

    @Test
    void aQuestionTellsHowFarItIsAndCanBeStopped() throws Exception {
        String asked = "{\"question\":\"wait\",\"text\":\"title: x\",\"weather\":\"cool-maritime-hills\"}";
        assertEquals("{\"number\":1}", posted("ask", asked).text());
        working.await();
        assertEquals(
                "{\"sentences\":[\"Another question is being answered: wait for it, or stop it.\"]}",
                posted("ask", asked).text());
        assertEquals(404, got("ask/1/report.html").code());
        assertEquals(204, posted("ask/1/stop", "").code());
        PageWire.Answer events = got("ask/1/events");
        assertTrue(events.head().contains("text/event-stream"), events.head());
        assertTrue(
                events.text().contains("data: {\"done\":3,\"all\":7,\"ended\":true,\"sentences\":[\"Stopped.\"]}"),
                events.text());
        assertEquals(
                "{\"sentences\":[\"There is no such question.\"]}",
                posted("ask", asked.replace("\"wait\"", "\"rm\"")).text());
    }

    @Test
    void theZipHoldsTheFolderAndIsAlwaysTheSame() throws Exception {
        Weathers.Kept weather = new Weathers().of("cool-maritime-hills").orElseThrow();
        DesignText text = DesignText.of("design.yaml", DESIGN);
        DesignDocument design = text.document();
        YearResult run = YearStudy.run(design.design(), weather.runner(), HourSink.IGNORE);
        Document document = YearAnswer.of(run, YearAnswer.Beside.NOTHING, LiveYear.asked(design, text, weather, run));
        byte[] zip = ReportFiles.zip(document).bytes();
        assertArrayEquals(zip, ReportFiles.zip(document).bytes());
        Map<String, byte[]> folder = ResultsFolder.files(document);
        int count = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                assertArrayEquals(folder.get(entry.getName().replace("warmvat-year/", "")), all(in), entry.getName());
                count++;
            }
        }
        assertEquals(folder.size(), count);
        Reply report = ReportFiles.report(document);
        assertTrue(report.policy().startsWith("default-src 'none'; style-src 'sha256-"), report.policy());
    }

    private static byte[] all(InputStream in) throws IOException {
        return in.readAllBytes();
    }
}
